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

    private static readonly TriedDrill InVain = new(Plain.Id, 9, TriedOutcome.NoChange);

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

    [Fact]
    public void From_the_very_year_on_it_is_offered()
    {
        Assert.Null(Why(Plain, s => s with { BirthYear = 2012 }));
        Assert.Null(Why(Plain with { FromAge = 16 }, s => s with { BirthYear = 2009 }));
    }

    [Fact]
    public void Of_two_limits_only_the_loaded_are_named_and_in_order()
    {
        var hips = Plain with { Loads = [new RegionLoad(Region.LowerBack, false), new RegionLoad(Region.LeadHip, false)] };
        Expect(Why(hips, s => s with { Limits = [new BodyLimit(Region.LowerBack, LimitStatus.Current), new BodyLimit(Region.LeadHip, LimitStatus.Current), new BodyLimit(Region.Ankle, LimitStatus.Current)] }), WithheldReason.Limit, "lead-hip, lower-back");
        Expect(Why(Plain with { Levels = [Level.Experienced, Level.Elite] }, s => s), WithheldReason.Level, "experienced, elite");
    }

    [Fact]
    public void Of_several_reasons_the_body_comes_first_then_what_is_at_hand_then_who_and_what_was_tried()
    {
        var drill = Plain with { Kit = [Kit.Chair], Rooms = [Room.Net], Levels = [Level.Elite], FromAge = 16, Opposites = [FaultId.Parse("impact-spine-tilt.low")] };
        Func<Drill, Drill>[] mends = [d => d with { Kit = [] }, d => d with { Rooms = [Room.Range] }, d => d with { Levels = [] }, d => d with { FromAge = null }];
        var reasons = new List<WithheldReason?>();
        StudentFacts Young(StudentFacts s) => s with { BirthYear = 2011 };
        reasons.Add(Why(drill, s => Young(s) with { Limits = [new BodyLimit(Region.LowerBack, LimitStatus.Current)] }, tried: InVain)?.Reason);
        reasons.Add(Why(drill, Young, tried: InVain)?.Reason);
        foreach (var mend in mends) reasons.Add(Why(drill = mend(drill), Young, tried: InVain)?.Reason);
        reasons.Add(Why(drill, Young)?.Reason);
        Assert.Equal([WithheldReason.Limit, WithheldReason.Kit, WithheldReason.Room, WithheldReason.Level, WithheldReason.Age, WithheldReason.TriedInVain, WithheldReason.OppositeFault], reasons);
    }

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
