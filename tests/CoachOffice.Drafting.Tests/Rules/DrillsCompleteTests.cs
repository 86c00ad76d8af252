using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Tests.Rules;

/// <summary>What a drill of the shipped rulebook must say beyond what the reader insists on.</summary>
public sealed class DrillsCompleteTests
{
    private const int MostWordsOfACue = 12;

    /// <summary>Kit that asks for a caution, and the cautions of which one must be there.</summary>
    private static readonly Dictionary<Kit, string[]> CautionsOfKit = new()
    {
        [Kit.AlignmentStick] = ["sticks-flat", "sticks-upright", "sticks-slow", "swish-clear"],
        [Kit.Wall] = ["slow-near-walls"],
        [Kit.Mirror] = ["slow-near-walls"],
        [Kit.Chair] = ["steady-chair"],
        [Kit.ImpactBag] = ["bag-soft"],
        [Kit.SoftBall] = ["soft-only"],
        [Kit.FootPowderSpray] = ["powder-outdoors"],
    };

    private static IReadOnlyList<Drill> Drills => HouseBook.Book.Drills;

    [Fact]
    public void There_are_three_steps_and_one_short_cue() =>
        Assert.Empty(Drills.Where(d => d.Steps.Count < 3 || d.Cue.Split(' ').Length > MostWordsOfACue || d.Cue.EndsWith('.')).Select(d => d.Id.Value));

    [Fact]
    public void What_pulls_one_way_names_the_other_as_opposite()
    {
        var silent = from drill in Drills
                     from fault in drill.Trains
                     let other = new FaultId(fault.Measure, fault.Side == Side.Low ? Side.High : Side.Low)
                     where !drill.Trains.Contains(other) && !drill.Opposites.Contains(other)
                     where !HouseBook.Book.Find(fault.Measure)!.NoFaultSides.Contains(other.Side)
                     select $"{drill.Id.Value}: {other}";
        Assert.Empty(silent);
    }

    [Fact]
    public void A_swing_names_what_it_loads() =>
        Assert.Empty(Drills.Where(d => d.Club != DrillClub.None && d.Stages.Any(s => s > Stage.Rehearse) && d.Loads.Count == 0).Select(d => d.Id.Value));

    [Fact]
    public void More_than_a_swing_has_a_youngest_age() =>
        Assert.Empty(Drills.Where(d => d.Loads.Any(l => l.MoreThanSwing) && d.FromAge is null).Select(d => d.Id.Value));

    [Fact]
    public void Kit_that_can_hurt_brings_its_caution() =>
        Assert.Empty(Drills.Where(d => d.Kit.Any(k => CautionsOfKit.TryGetValue(k, out var any) && !d.Cautions.Any(c => any.Contains(c.Value)))).Select(d => d.Id.Value));

    [Fact]
    public void A_half_swing_at_home_says_how_it_stays_safe() =>
        Assert.Empty(Drills.Where(d => d.Rooms.Contains(Room.Home) && d.Club != DrillClub.None && d.Stages.Any(s => s > Stage.Rehearse) && d.Cautions.All(c => c.Value != "indoor-half")).Select(d => d.Id.Value));

    [Fact]
    public void Swings_in_a_garden_or_on_a_course_say_where_the_ball_stays_away()
    {
        var silent = Drills.Where(d => d.Rooms.Contains(Room.Course) && d.Stages.Any(s => s is Stage.Half or Stage.Full) && !d.Steps.Any(s => s.Contains("course", StringComparison.Ordinal) || s.Contains("elsewhere", StringComparison.Ordinal)));
        Assert.Empty(silent.Select(d => d.Id.Value));
    }

    [Fact]
    public void Every_stage_a_drill_is_for_is_a_stage_of_some_ladder()
    {
        var used = HouseBook.Book.Progressions.SelectMany(p => p.Rungs).SelectMany(r => r.Drills.Select(d => (d, r.Stage))).ToHashSet();
        Assert.Empty(Drills.SelectMany(d => d.Stages.Select(s => (d.Id, s))).Where(d => !used.Contains(d)).Select(d => $"{d.Id.Value} {d.s}"));
    }
}
