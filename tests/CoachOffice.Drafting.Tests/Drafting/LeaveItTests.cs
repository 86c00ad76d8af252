using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Tests.Drafting;

/// <summary>When a swing is left alone, and everything that speaks against it.</summary>
public sealed class LeaveItTests
{
    private static readonly MeasuredValue[] FliesWell =
        [HouseBook.Value("club-path", 1), HouseBook.Value("face-to-path", 0.5), HouseBook.Value("low-point", 7), HouseBook.Value("downswing-head-shift", 10)];

    [Fact]
    public void A_ball_that_flies_well_is_left_alone() => Assert.True(Leaves(HouseBook.Lesson(Club.Iron, FliesWell)));

    [Theory]
    [InlineData("club-path")]
    [InlineData("face-to-path")]
    [InlineData("low-point")]
    public void Not_when_nobody_read(string measure) =>
        Assert.False(Leaves(HouseBook.Lesson(Club.Iron, [.. FliesWell.Where(r => r.Measure.Value != measure)])));

    [Theory]
    [InlineData("club-path", -9)]
    [InlineData("face-to-path", 7)]
    [InlineData("low-point", -3)]
    [InlineData("downswing-head-shift", 16)]
    [InlineData("top-spine-tilt", -6)]
    public void Not_when_out_or_marked_or_leaning_toward_the_target(string measure, double value) =>
        Assert.False(Leaves(HouseBook.Lesson(Club.Iron, [.. FliesWell.Where(r => r.Measure.Value != measure), HouseBook.Value(measure, value)])));

    [Theory]
    [InlineData(null, false)]
    [InlineData(36.0, false)]
    [InlineData(42.0, true)]
    public void With_distance_as_the_first_goal_only_at_the_wanted_speed(double? speed, bool leaves)
    {
        MeasuredValue[] fast = speed is { } read ? [HouseBook.Value("club-speed", read)] : [];
        var facts = HouseBook.Lesson(Club.Iron, [.. FliesWell, .. fast]);
        Assert.Equal(leaves, Leaves(facts with { Student = facts.Student with { Goals = [Goal.Distance], ClubSpeedGoal = new Quantity(40, Unit.MetrePerSecond) } }));
    }

    [Fact]
    public void A_fault_left_alone_has_shown_no_harm() =>
        Assert.Contains(Drafter.Draft(HouseBook.Compiled, HouseBook.Lesson(Club.Iron, FliesWell)).Parked, p => p.Reason == ParkedReason.NoHarmShown && p.Fault.Measure.Value == "downswing-head-shift");

    private static bool Leaves(LessonFacts facts)
    {
        var draft = Drafter.Draft(HouseBook.Compiled, facts);
        Assert.Equal(draft.Focus.Count == 0, draft.Trace.Any(t => t.Rule == "order:leave-it"));
        return draft.Focus.Count == 0;
    }
}
