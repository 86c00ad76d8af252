using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Drills;

namespace CoachOffice.Drafting.Tests.Drafting;

/// <summary>How drills are fitted into a week.</summary>
public sealed class WeekTests
{
    [Theory]
    [InlineData(1988, 300, 7, 300, 7)]
    [InlineData(2009, 1200, 7, 960, 6)]
    [InlineData(2012, 1200, 7, 780, 6)]
    [InlineData(2008, 1200, 7, 1020, 6)]
    [InlineData(2007, 1200, 7, 1200, 7)]
    [InlineData(2013, 300, 7, 180, 5)]
    [InlineData(2023, 300, 7, 120, 5)]
    public void The_young_have_less(int birthYear, int given, int days, int minutes, int kept)
    {
        // AAP guidance and Jayanthi et al. 2015: hours a week at most the age, one to two days off.
        var facts = HouseBook.Lesson(Club.Iron);
        var week = Week.Of(facts with { Student = facts.Student with { BirthYear = birthYear, MinutesPerWeek = given, DaysPerWeek = days } }, HouseBook.Book.Dosage);
        Assert.Equal((minutes, kept), (week.Minutes, week.Days));
    }

    [Theory]
    [InlineData(29, 1, false)]
    [InlineData(30, 2, false)]
    [InlineData(36, 2, true)]
    [InlineData(60, 3, true)]
    public void The_minutes_decide_how_many_drills_and_whether_two_things(int minutes, int drills, bool two)
    {
        var facts = HouseBook.Lesson(Club.Iron);
        var week = Week.Of(facts with { Student = facts.Student with { MinutesPerWeek = minutes } }, HouseBook.Book.Dosage);
        Assert.Equal((drills, two), (week.Drills, week.HasRoomForTwo(HouseBook.Book.Dosage)));
        Assert.Equal(minutes, week.First.Minutes + week.Second.Minutes);
        Assert.Equal(week.Thirds, week.First.Thirds + week.Second.Thirds);
    }

    [Theory]
    [InlineData(Stage.Rehearse, 18, 3, "3 x 10 in 6 min, 3 a week")]
    [InlineData(Stage.Rehearse, 17, 3, "4 x 10 in 7 min, 2 a week")]
    [InlineData(Stage.Rehearse, 5, 3, "")]
    [InlineData(Stage.Half, 30, 3, "4 x 10 in 10 min, 3 a week")]
    [InlineData(Stage.Full, 90, 1, "6 x 10 in 30 min, 1 a week")]
    [InlineData(Stage.Full, 24, 3, "3 x 5 in 8 min, 3 a week")]
    [InlineData(Stage.Mix, 36, 3, "3 x 5 in 12 min, 3 a week")]
    public void Fewer_sessions_before_no_drill_and_never_over_the_ceiling(Stage stage, int minutes, int days, string dose)
    {
        var drill = HouseBook.Book.Drills.First(d => d.MostReps is null);
        var doses = new Dosing(HouseBook.Book.Dosage).Fit(stage, [drill], new Week(minutes, days, int.MaxValue, 1));
        Assert.Equal(dose, string.Concat(doses.Select(d => $"{d.Sets} x {d.Reps} in {d.MinutesPerSession} min, {d.SessionsPerWeek} a week")));
    }

    [Fact]
    public void A_drills_own_ceiling_holds()
    {
        var drill = HouseBook.Book.Drills.First(d => d.MostReps is not null);
        var dose = new Dosing(HouseBook.Book.Dosage).Fit(Stage.Rehearse, [drill], new Week(240, 3, int.MaxValue, 1)).Single();
        Assert.InRange(dose.Sets * dose.Reps, 1, drill.MostReps!.Value);
    }

    [Theory]
    [InlineData(5, "1 x 5")]
    [InlineData(4, "1 x 4")]
    [InlineData(12, "2 x 5")]
    public void A_drill_of_few_repetitions_fits_into_the_shortest_session(int most, string dose)
    {
        var drill = HouseBook.Book.Drills[0] with { MostReps = most };
        var doses = new Dosing(HouseBook.Book.Dosage).Fit(Stage.Full, [drill], new Week(6, 1, int.MaxValue, 1));
        Assert.Equal(dose, string.Concat(doses.Select(d => $"{d.Sets} x {d.Reps}")));
    }

    [Fact]
    public void Full_speed_has_a_ceiling_of_its_own_and_half_speed_has_not()
    {
        var dosing = new Dosing(HouseBook.Book.Dosage with { MostFullSpeedBalls = 30 });
        var drill = HouseBook.Book.Drills.First(d => d.MostReps is null);
        Assert.Equal(30, dosing.Fit(Stage.Full, [drill], new Week(240, 1, int.MaxValue, 1)).Sum(d => d.Sets * d.Reps));
        Assert.Equal(60, dosing.Fit(Stage.Half, [drill], new Week(240, 1, int.MaxValue, 1)).Sum(d => d.Sets * d.Reps));
    }

    [Fact]
    public void Two_drills_share_the_session_and_its_ceiling()
    {
        var drills = HouseBook.Book.Drills.Where(d => d.MostReps is null).Take(3).ToList();
        var doses = new Dosing(HouseBook.Book.Dosage).Fit(Stage.Full, drills, new Week(240, 3, int.MaxValue, 3));
        Assert.Equal(2, doses.Count);
        Assert.InRange(doses.Sum(d => d.Sets * d.Reps), 30, 60);
    }
}
