using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Tests.Students;

public sealed class StudentCheckTests
{
    private static readonly LocalDate Today = new(2026, 5, 4);

    private static readonly Guardian Parent = new() { Name = "Ida Feld", Email = "ida@example.org" };

    private static readonly StudentDetails Good = new() { GivenName = "Mara", FamilyName = "Feld", Email = "mara@example.org", BirthDate = new LocalDate(1990, 3, 5) };

    [Fact]
    public void A_name_alone_is_enough() => Assert.Empty(StudentCheck.Of(new StudentDetails { GivenName = "Mara" }, Today));

    [Theory]
    [InlineData("M", true)]
    [InlineData("", false)]
    [InlineData("  ", false)]
    [InlineData("\u200b", false)]
    public void A_name_can_be_seen(string name, bool fits) => Refused.Unless(fits, StudentCheck.Of(Good with { GivenName = name }, Today), "student-name", "GivenName");

    [Theory]
    [InlineData(120, true)]
    [InlineData(121, false)]
    public void A_name_has_up_to_120_characters(int length, bool fits)
    {
        Refused.Unless(fits, StudentCheck.Of(Good with { GivenName = Text(length) }, Today), "student-name-long", "GivenName");
        Refused.Unless(fits, StudentCheck.Of(Good with { FamilyName = Text(length) }, Today), "student-name-long", "GivenName");
    }

    [Theory]
    [InlineData(40, true)]
    [InlineData(41, false)]
    public void A_phone_number_has_up_to_40_characters(int length, bool fits) =>
        Refused.Unless(fits, StudentCheck.Of(Good with { Phone = Text(length) }, Today), "student-phone", "Phone");

    [Theory]
    [InlineData(20_000, true)]
    [InlineData(20_001, false)]
    public void Notes_have_up_to_20_000_characters(int length, bool fits) =>
        Refused.Unless(fits, StudentCheck.Of(Good with { Notes = Text(length) }, Today), "student-notes", "Notes");

    [Fact]
    public void Notes_may_have_several_lines() => Assert.Empty(StudentCheck.Of(Good with { Notes = "Plays on Sundays.\nLikes early hours." }, Today));

    [Theory]
    [InlineData(120, 40, 60, true)]
    [InlineData(121, 40, 60, false)]
    [InlineData(120, 41, 60, false)]
    [InlineData(120, 40, 61, false)]
    public void A_guardian_fits_into_120_40_and_60_characters(int name, int phone, int relation, bool fits) =>
        Refused.Unless(fits, StudentCheck.Of(With(Parent with { Name = Text(name), Phone = Text(phone), Relation = Text(relation) }), Today), "guardian-long", "Guardian.Name");

    [Theory]
    [InlineData(200, true)]
    [InlineData(201, false)]
    public void Who_told_of_a_limit_has_up_to_200_characters(int length, bool fits) =>
        Refused.Unless(fits, StudentCheck.Of(Good with { Limits = [Limit(Region.Neck, Today, "student"), Limit(Region.Ribs, Today, Text(length))] }, Today), "limit-source-long", "Limits");

    [Theory]
    [InlineData(0)]
    [InlineData(0xD83D)]
    public void No_text_holds_a_character_that_cannot_be_kept(int letter)
    {
        var text = "Mara" + (char)letter;
        StudentDetails[] entered =
        [
            Good with { GivenName = text }, Good with { FamilyName = text }, Good with { Phone = text }, Good with { Notes = text },
            With(Parent with { Name = text }), With(Parent with { Phone = text }), With(Parent with { Relation = text }),
            Good with { Limits = [Limit(Region.Neck, Today, text)] },
        ];
        Assert.All(entered, details => Refused.Only(StudentCheck.Of(details, Today), "student-text", "GivenName"));
    }

    [Fact]
    public void What_goes_into_lists_and_letters_stands_in_one_line()
    {
        const string Broken = "Mara\r\nBcc: someone";
        Refused.Only(StudentCheck.Of(Good with { GivenName = Broken }, Today), "student-line", "GivenName");
        Refused.Only(StudentCheck.Of(Good with { FamilyName = Broken }, Today), "student-line", "FamilyName");
        Refused.Only(StudentCheck.Of(Good with { Phone = Broken }, Today), "student-line", "Phone");
        Refused.Only(StudentCheck.Of(With(Parent with { Name = Broken }), Today), "student-line", "Guardian.Name");
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("mara@example.org", true)]
    [InlineData("mara", false)]
    public void A_mail_address_may_be_left_out_and_looks_like_one_otherwise(string address, bool fits) =>
        Refused.Unless(fits, StudentCheck.Of(Good with { Email = address }, Today), "student-mail", "Email");

    [Theory]
    [InlineData(2026, 5, 5, false)]
    [InlineData(1916, 5, 4, true)]
    [InlineData(1916, 5, 3, false)]
    public void A_birth_date_lies_between_110_years_back_and_today(int year, int month, int day, bool fits) =>
        Refused.Unless(fits, StudentCheck.Of(Good with { BirthDate = new LocalDate(year, month, day), Guardian = year > 2000 ? Parent : null }, Today), "student-birth-date", "BirthDate");

    [Fact]
    public void Born_today_is_no_mistake() => Assert.Empty(StudentCheck.Of(With(Parent) with { BirthDate = Today }, Today));

    [Theory]
    [InlineData(5, false)]
    [InlineData(4, true)]
    public void Until_the_day_of_eighteen_a_student_needs_a_guardian(int dayOfMay, bool fits)
    {
        var birth = Good with { BirthDate = new LocalDate(2008, 5, dayOfMay) };
        Refused.Unless(fits, StudentCheck.Of(birth, Today), "guardian-needed", "Guardian.Name");
        Assert.Empty(StudentCheck.Of(birth with { Guardian = Parent }, Today));
    }

    [Theory]
    [InlineData("")]
    [InlineData("ida at example.org")]
    public void A_guardian_can_be_written_to(string address) => Refused.Only(StudentCheck.Of(With(Parent with { Email = address }), Today), "guardian-mail", "Guardian.Email");

    [Theory]
    [InlineData(-1, false)]
    [InlineData(0, true)]
    [InlineData(2400, true)]
    [InlineData(2401, false)]
    public void Minutes_a_week_lie_between_0_and_2400(int minutes, bool fits) =>
        Refused.Unless(fits, StudentCheck.Of(Good with { MinutesPerWeek = minutes }, Today), "student-minutes", "MinutesPerWeek");

    [Theory]
    [InlineData(-1, false)]
    [InlineData(0, true)]
    [InlineData(7, true)]
    [InlineData(8, false)]
    public void A_week_has_seven_days(int days, bool fits) => Refused.Unless(fits, StudentCheck.Of(Good with { DaysPerWeek = days }, Today), "student-days", "DaysPerWeek");

    [Fact]
    public void A_goal_is_named_once()
    {
        Assert.Empty(StudentCheck.Of(Good with { Goals = [Goal.Distance, Goal.Comfort] }, Today));
        Refused.Only(StudentCheck.Of(Good with { Goals = [Goal.Distance, Goal.Comfort, Goal.Distance] }, Today), "student-goals", "Goals");
    }

    [Theory]
    [InlineData(8, "m/s", true)]
    [InlineData(7.9, "m/s", false)]
    [InlineData(70, "m/s", true)]
    [InlineData(70.1, "m/s", false)]
    [InlineData(105, "mph", true)]
    public void A_speed_goal_lies_between_8_and_70_metres_a_second(double goal, string unit, bool fits) =>
        Refused.Unless(fits, StudentCheck.Of(Good with { ClubSpeedGoal = new Quantity(goal, Unit.Find(unit)!) }, Today), "student-speed-goal", "ClubSpeedGoal");

    [Theory]
    [InlineData(80, "cm", true)]
    [InlineData(79.9, "cm", false)]
    [InlineData(230, "cm", true)]
    [InlineData(230.1, "cm", false)]
    [InlineData(6, "ft", true)]
    public void Height_lies_between_80_and_230_centimetres(double height, string unit, bool fits) =>
        Refused.Unless(fits, StudentCheck.Of(Good with { Height = new Quantity(height, Unit.Find(unit)!) }, Today), "student-height", "Height");

    [Theory]
    [InlineData(4, true)]
    [InlineData(5, false)]
    public void A_limit_is_noted_today_or_earlier(int dayOfMay, bool fits) =>
        Refused.Unless(fits, StudentCheck.Of(Good with { Limits = [Limit(Region.Ribs, Today, "student"), Limit(Region.Neck, new LocalDate(2026, 5, dayOfMay), "student")] }, Today), "limit-date", "Limits");

    [Fact]
    public void A_region_is_named_once()
    {
        Assert.Empty(StudentCheck.Of(Good with { Limits = [Limit(Region.Neck, Today, "student"), Limit(Region.Ribs, Today, "student")] }, Today));
        Refused.Only(StudentCheck.Of(Good with { Limits = [Limit(Region.Neck, Today, "student"), Limit(Region.Ribs, Today, "student"), Limit(Region.Neck, Today, "student")] }, Today), "limit-twice", "Limits");
    }

    [Fact]
    public void Everything_that_is_wrong_is_said_at_once() =>
        Assert.Equal(
            ["student-phone", "student-name", "guardian-mail", "student-days", "student-height"],
            StudentCheck.Of(Wrong, Today).Select(r => r.Code));

    private static StudentDetails Wrong => new() { GivenName = "", Phone = Text(41), Guardian = Parent with { Email = "" }, DaysPerWeek = 8, Height = new Quantity(79, Unit.Centimetre) };

    private static StudentDetails With(Guardian guardian) => Good with { Guardian = guardian };

    private static StudentLimit Limit(Region region, LocalDate on, string source) => new() { Region = region, Status = LimitStatus.Current, NotedOn = on, Source = source };

    private static string Text(int length) => new('x', length);
}
