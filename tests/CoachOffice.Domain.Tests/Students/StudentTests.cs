using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Tests.Students;

public sealed class StudentTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 5, 4, 10, 0);
    private static readonly Instant Later = Now + Duration.FromDays(1);
    private static readonly LocalDate Today = new(2026, 5, 4);
    private static readonly Guardian Parent = new() { Name = "Ida Feld", Email = "ida@example.org" };
    private static readonly StudentId Id = StudentId.From(new Guid("00000000-0000-0000-0000-0000abcdef12"));

    private static readonly StudentDetails Details = new()
    {
        GivenName = " Mara ",
        FamilyName = " Feld ",
        Email = " mara@example.org ",
        Phone = " 0123 ",
        Notes = " likes mornings ",
        BirthDate = new LocalDate(1990, 3, 5),
        Guardian = Parent,
        Hand = Hand.Left,
        Level = Level.Experienced,
        Goals = [Goal.Contact],
        Kit = [Kit.Mirror],
        Room = Room.Home,
        MinutesPerWeek = 75,
        DaysPerWeek = 4,
        Limits = [new StudentLimit { Region = Region.Neck, Status = LimitStatus.Current, NotedOn = Today, Source = "student" }],
        ClubSpeedGoal = new Quantity(100, Unit.MilePerHour),
        Height = new Quantity(6, Unit.Foot),
    };

    [Fact]
    public void What_was_entered_is_kept_trimmed_and_metric()
    {
        var student = Student.Register(Id, Details, Now);
        Assert.Equal((Id, Now, "Mara", "Feld"), (student.Id, student.AddedAt, student.GivenName, student.FamilyName));
        Assert.Equal(("mara@example.org", "0123", "likes mornings"), (student.Email, student.Phone, student.Notes));
        Assert.Equal((new LocalDate(1990, 3, 5), Parent), (student.BirthDate!.Value, student.Guardian));
        Assert.Equal((Hand.Left, Level.Experienced, Room.Home, 75, 4), (student.Hand, student.Level, student.Room, student.MinutesPerWeek, student.DaysPerWeek));
        Assert.Equal((Details.Goals, Details.Kit, Details.Limits), (student.Goals, student.Kit, student.Limits));
        Assert.Equal((44.704, 182.88), (student.ClubSpeedGoalMetresPerSecond, student.HeightCm));
    }

    [Fact]
    public void A_list_finds_and_sorts_by_family_name_first() => Assert.Equal("feld mara mara@example.org 0123", Student.Register(Id, Details, Now).SearchText);

    [Theory]
    [InlineData("", "Mara")]
    [InlineData("Feld", "Mara Feld")]
    public void A_full_name_has_no_hole_where_the_family_name_is_missing(string family, string full) =>
        Assert.Equal(full, Student.Register(Id, Details with { FamilyName = family }, Now).FullName);

    [Fact]
    public void Changing_to_nothing_takes_the_old_away()
    {
        var student = Student.Register(Id, Details, Now);
        student.Change(new StudentDetails { GivenName = "Mara" });
        Assert.Equal(("", "", "", null, null), (student.FamilyName, student.Email, student.Notes, student.Guardian, student.HeightCm));
        Assert.Equal("mara", student.SearchText);
    }

    [Theory]
    [InlineData(2008, 5, 5, "Ida Feld", "ida@example.org", true)]
    [InlineData(2008, 5, 4, "Mara Feld", "mara@example.org", false)]
    public void Mail_goes_to_the_guardian_until_the_day_of_eighteen(int year, int month, int day, string name, string address, bool guardian) =>
        Assert.Equal(new MailRecipient(name, address, guardian), Student.Register(Id, Details with { BirthDate = new LocalDate(year, month, day) }, Now).RecipientOn(Today));

    [Fact]
    public void Without_a_birth_date_a_student_counts_as_grown_up() =>
        Assert.Equal(new MailRecipient("Mara Feld", "mara@example.org", false), Student.Register(Id, Details with { BirthDate = null }, Now).RecipientOn(Today));

    [Fact]
    public void Nobody_gets_mail_where_no_address_is_known()
    {
        Assert.Null(Student.Register(Id, Details with { Email = "" }, Now).RecipientOn(Today));
        Assert.Null(Student.Register(Id, Details with { BirthDate = Today.PlusYears(-10), Guardian = null }, Now).RecipientOn(Today));
    }

    [Fact]
    public void Archiving_twice_keeps_the_first_day_and_restoring_ends_it()
    {
        var student = Student.Register(Id, Details, Now);
        student.Archive(Now);
        student.Archive(Later);
        Assert.Equal(Now, student.ArchivedAt);
        student.Restore();
        Assert.Null(student.ArchivedAt);
    }

    [Fact]
    public void Stopping_messages_twice_keeps_the_first_moment_and_resuming_ends_it()
    {
        var student = Student.Register(Id, Details, Now);
        student.Stop(MessagePurpose.Encouragement, Now);
        student.Stop(MessagePurpose.Encouragement, Later);
        Assert.Equal(Now, student.MessagesStoppedAt);
        student.Allow(MessagePurpose.Encouragement);
        Assert.Null(student.MessagesStoppedAt);
    }

    [Fact]
    public void Erasing_leaves_a_pseudonym_and_what_figures_need()
    {
        var student = Student.Register(Id, Details, Now);
        student.Erase(Now);
        Assert.Equal(("Former student cdef12", "", "", "", ""), (student.FullName, student.FamilyName, student.Email, student.Phone, student.Notes));
        Assert.Equal((null, null, null, null), (student.BirthDate, student.Guardian, student.HeightCm, student.ClubSpeedGoalMetresPerSecond));
        Assert.Equal((0, 0, 0), (student.Limits.Count, student.Goals.Count, student.Kit.Count));
        Assert.Equal("former student cdef12", student.SearchText);
        Assert.Equal((Hand.Left, Level.Experienced, Room.Home, 0, 0), (student.Hand, student.Level, student.Room, student.MinutesPerWeek, student.DaysPerWeek));
        Assert.Equal((Now, Now), (student.ErasedAt!.Value, student.ArchivedAt!.Value));
    }

    [Fact]
    public void Nobody_writes_to_an_erased_student_and_an_earlier_archiving_stays()
    {
        var student = Student.Register(Id, Details, Now);
        student.Archive(Now);
        student.Erase(Later);
        student.Change(Details);
        Assert.Equal((Now, Later, null), (student.ArchivedAt!.Value, student.ErasedAt!.Value, student.RecipientOn(Today)));
    }
}
