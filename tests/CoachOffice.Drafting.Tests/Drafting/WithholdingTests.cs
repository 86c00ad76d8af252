using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Drills;

namespace CoachOffice.Drafting.Tests.Drafting;

/// <summary>Each reason for which a drill is not offered, and the detail that goes with it.</summary>
public sealed class WithholdingTests
{
    private static readonly Drill Plain = new()
    {
        Id = DrillId.From("plain"),
        Name = "Plain",
        Trains = [FaultId.Parse("downswing-head-shift.high")],
        Stages = [Stage.Half],
        Rooms = [Room.Range, Room.Garden, Room.Home],
        Club = DrillClub.Full,
        Loads = [new RegionLoad(Region.LowerBack, false), new RegionLoad(Region.LeadWrist, true)],
        Steps = ["Do it."],
        Cue = "see it",
        DoneWhen = new DoneWhen(8, 10, "swings"),
        Source = SourceMark.CommonPractice,
    };

    [Fact]
    public void Offered_when_nothing_speaks_against_it() => Assert.Null(Why(Plain, s => s));

    [Theory]
    [InlineData(Region.LowerBack, LimitStatus.Current, "lower-back")]
    [InlineData(Region.LowerBack, LimitStatus.Past, null)]
    [InlineData(Region.LeadWrist, LimitStatus.Past, "lead-wrist")]
    [InlineData(Region.LeadWrist, LimitStatus.Cleared, null)]
    [InlineData(Region.Ankle, LimitStatus.Current, "ankle")]
    public void A_recorded_limit(Region region, LimitStatus status, string? detail) =>
        Expect(Why(Plain, s => s with { Limits = [new BodyLimit(region, status)] }), WithheldReason.Limit, detail);

    [Fact]
    public void A_limit_of_today_elsewhere_still_leaves_rehearsal() =>
        Assert.Null(Why(Plain, s => s with { Limits = [new BodyLimit(Region.Ankle, LimitStatus.Current)] }, Stage.Rehearse));

    [Fact]
    public void Kit_that_is_missing() => Expect(Why(Plain with { Kit = [Kit.Chair, Kit.Mirror, Kit.Net] }, s => s with { Kit = [Kit.Mirror] }), WithheldReason.Kit, "net, chair");

    [Fact]
    public void Another_place() => Expect(Why(Plain, s => s with { Room = Room.Net }), WithheldReason.Room, "home, garden, range");

    [Fact]
    public void Full_speed_at_home() => Expect(Why(Plain, s => s with { Room = Room.Home }, Stage.Full), WithheldReason.Room, "no full speed at home");

    [Fact]
    public void A_real_ball_in_a_garden() =>
        Expect(Why(Plain with { Kit = [Kit.Ball] }, s => s with { Room = Room.Garden, Kit = [Kit.Ball] }), WithheldReason.Room, "no real ball in a garden");

    [Fact]
    public void Another_level() => Expect(Why(Plain with { Levels = [Level.Elite] }, s => s), WithheldReason.Level, "elite");

    [Fact]
    public void Too_young() => Expect(Why(Plain with { FromAge = 16 }, s => s with { BirthYear = 2010 }), WithheldReason.Age, "from 16");

    [Fact]
    public void More_than_a_swing_under_thirteen() =>
        Expect(Why(Plain, s => s with { BirthYear = 2013 }), WithheldReason.Age, "from 13: loads lead-wrist more than a swing");

    [Theory]
    [InlineData(6, TriedOutcome.NoChange, "6 sessions, no-change")]
    [InlineData(5, TriedOutcome.NoChange, null)]
    [InlineData(9, TriedOutcome.Improved, null)]
    [InlineData(1, TriedOutcome.Worse, "1 sessions, worse")]
    public void Tried_in_vain(int sessions, TriedOutcome outcome, string? detail) =>
        Expect(Why(Plain, s => s, tried: new TriedDrill(Plain.Id, sessions, outcome)), WithheldReason.TriedInVain, detail);

    [Fact]
    public void It_would_push_a_measured_fault_further_out() =>
        Expect(Why(Plain with { Opposites = [FaultId.Parse("impact-spine-tilt.low")] }, s => s), WithheldReason.OppositeFault, "impact-spine-tilt.low");

    [Fact]
    public void It_trains_what_a_standing_pattern_forbids() =>
        Expect(Why(Plain, s => s, forbidden: FaultId.Parse("downswing-head-shift.high")), WithheldReason.OppositeFault, "downswing-head-shift.high");

    private static void Expect(DraftWithheld? withheld, WithheldReason reason, string? detail) =>
        Assert.Equal(detail is null ? null : new DraftWithheld("plain", reason, detail), withheld);

    private static DraftWithheld? Why(Drill drill, Func<StudentFacts, StudentFacts> student, Stage stage = Stage.Half, TriedDrill? tried = null, FaultId? forbidden = null)
    {
        var facts = HouseBook.Lesson(Club.Driver, HouseBook.Value("impact-spine-tilt", 10));
        var at = LessonAtHand.Of(HouseBook.Book, facts with { Student = student(facts.Student), Tried = tried is null ? [] : [tried] });
        return new Withholding(at, forbidden is { } fault ? [fault] : []).Of(drill, stage);
    }
}
