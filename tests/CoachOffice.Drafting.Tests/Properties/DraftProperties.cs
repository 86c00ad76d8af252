using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Patterns;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>What holds for every draft of any lesson by the shipped rulebook.</summary>
public sealed class DraftProperties
{
    [Fact]
    public void The_engine_fires_exactly_the_patterns_the_plain_evaluator_says_hold() => Drafted.Always((facts, _) =>
    {
        var lesson = HouseBook.Context(facts);
        var held = PatternEvaluator.Evaluate(HouseBook.Book, lesson).Where(m => m.Holds).Select(m => m.Pattern.Id.Value);
        Assert.Equal(held, HouseBook.Compiled.Fire(lesson).Select(p => p.Id.Value));
    });

    [Fact]
    public void A_near_miss_never_also_fired() => Drafted.Always((_, draft) =>
        Assert.Empty(draft.Rules("near-miss:").Intersect(draft.Fired())));

    [Fact]
    public void The_order_of_the_readings_never_matters() =>
        Gen.Select(RandomLessons.One, Gen.Int).Sample((facts, seed) =>
        {
            var shuffled = facts.Readings.OrderBy(r => HashCode(seed, r.Measure.Value)).ToList();
            Assert.Equal(DraftJson.Text(Drafted.Of(facts)), DraftJson.Text(Drafted.Of(facts with { Readings = shuffled })));
        }, iter: Drafted.Lessons);

    [Fact]
    public void The_first_stages_fit_into_the_week() => Drafted.Always((facts, draft) =>
    {
        var first = draft.Focus.Select(f => draft.Stages.First(s => s.Fault == f.Fault)).SelectMany(s => s.Drills);
        Assert.InRange(first.Sum(d => d.SessionsPerWeek * d.MinutesPerSession), 0, facts.Student.MinutesPerWeek);
        Assert.All(draft.Stages.SelectMany(s => s.Drills), d => Assert.InRange(d.SessionsPerWeek, 1, facts.Student.DaysPerWeek));
        Assert.InRange(first.Count(), 0, facts.Student.MinutesPerWeek < 30 ? 1 : facts.Student.MinutesPerWeek < 60 ? 2 : 3);
    });

    [Fact]
    public void A_session_never_asks_for_more_than_its_ceiling() => Drafted.Always((_, draft) =>
    {
        foreach (var stage in draft.Stages.GroupBy(s => s.Stage))
        {
            var most = stage.Key >= Stage.Full ? 60 : 100;
            Assert.InRange(stage.SelectMany(s => s.Drills).Sum(d => d.Sets * d.Reps), 1, most);
        }
    });

    [Fact]
    public void No_withheld_drill_is_in_the_plan() => Drafted.Always((_, draft) => Assert.Empty(draft.Withheld.Select(w => w.Drill).Intersect(draft.Drills().Select(d => d.Id.Value))));

    [Fact]
    public void Every_drill_can_be_done_by_this_student() => Drafted.Always((facts, draft) => Assert.All(draft.Drills(), drill =>
    {
        Assert.Contains(facts.Student.Room, drill.Rooms);
        Assert.Empty(drill.Kit.Except(facts.Student.Kit));
        Assert.DoesNotContain(facts.Student.Limits, l => l.Status == LimitStatus.Current && drill.Loads.Any(load => load.Region == l.Region));
        Assert.DoesNotContain(facts.Student.Limits, l => l.Status == LimitStatus.Past && drill.Loads.Any(load => load.Region == l.Region && load.MoreThanSwing));
        Assert.True(facts.Age >= 13 || drill.Loads.All(load => !load.MoreThanSwing));
        Assert.DoesNotContain(facts.Tried, t => t.Drill == drill.Id && t.Outcome == TriedOutcome.NoChange && t.Sessions >= 6);
    }));

    [Fact]
    public void No_drill_pushes_a_measured_fault_further_out() => Drafted.Always((_, draft) =>
    {
        var fields = draft.Findings.Where(f => f.Grade >= Grade.Mild).Select(f => new FaultId(MeasureId.From(f.Measure), f.Side)).ToHashSet();
        Assert.All(draft.Drills(), d => Assert.Empty(d.Opposites.Intersect(fields)));
    });

    [Fact]
    public void Every_fault_is_worked_on_or_parked_and_only_once() => Drafted.Always((_, draft) =>
    {
        var found = draft.Findings.Where(f => f.Side != Side.None).Select(f => $"{f.Measure}.{Domain.Terms.Of(f.Side)}").Order(StringComparer.Ordinal);
        Assert.Equal(found, draft.Focus.Select(f => f.Fault).Concat(draft.Parked.Select(p => p.Fault)).Select(f => f.ToString()).Order(StringComparer.Ordinal));
    });

    [Fact]
    public void A_new_limit_never_reorders_the_work() =>
        Gen.Select(RandomLessons.One, Gen.OneOf(Enum.GetValues<Region>()), Gen.OneOf(LimitStatus.Current, LimitStatus.Past)).Sample((facts, region, status) =>
        {
            var (before, after) = (Drafted.Of(facts), Drafted.Of(facts with { Student = facts.Student with { Limits = [.. facts.Student.Limits, new BodyLimit(region, status)] } }));
            Assert.Equal(Keys(before), Keys(after));
            if (status == LimitStatus.Current) Assert.InRange(after.Focus.Count, 0, 1);
            if (before.Focus.Count == 0 || (after.Focus.Count > 0 && after.Focus[0].Fault == before.Focus[0].Fault)) return;
            Assert.Contains(after.Parked, p => p.Fault == before.Focus[0].Fault && p.Reason == ParkedReason.NoDrill);
        }, iter: Drafted.Lessons);

    [Fact]
    public void A_limit_of_today_leaves_one_thing_to_rehearse() => Drafted.Always((facts, draft) =>
    {
        if (facts.Student.Limits.All(l => l.Status != LimitStatus.Current)) return;
        Assert.All(draft.Stages, s => Assert.Equal(Stage.Rehearse, s.Stage));
        Assert.InRange(draft.Focus.Count, 0, 1);
    });

    [Fact]
    public void Children_get_one_thing_and_short_sessions() => Drafted.Always((facts, draft) =>
    {
        if (facts.Age >= 13) return;
        Assert.InRange(draft.Focus.Count, 0, 1);
        Assert.All(draft.Stages, s => Assert.InRange(s.Drills.Sum(d => d.MinutesPerSession), 1, 20));
    });

    [Fact]
    public void The_first_focus_never_waits_for_the_second() => Drafted.Always((_, draft) =>
    {
        if (draft.Focus is not [var first, var second]) return;
        Assert.Empty(first.After);
        Assert.All(second.After, fault => Assert.Equal(first.Fault, fault));
    });

    [Fact]
    public void A_stored_draft_reads_back_to_the_same_bytes() => Drafted.Always((_, draft) => Assert.Equal(DraftJson.Text(draft), DraftJson.Text(DraftJson.Read(DraftJson.Text(draft)))));

    /// <summary>The first order of the candidates; an undecided one may be added when a limit takes the drills of all others.</summary>
    private static string Keys(Draft draft) => string.Join('\n', draft.Trace.Where(t => t.Rule == "order:key").Take(1).SelectMany(t => t.Facts));

    private static int HashCode(int seed, string text) => text.Aggregate(seed, (sum, letter) => unchecked((sum * 31) + letter));
}
