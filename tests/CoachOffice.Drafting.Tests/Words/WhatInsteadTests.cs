using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Tests.Words;

/// <summary>Where a plan leaves something out it says what to do instead, among the cautions.</summary>
public sealed class WhatInsteadTests
{
    [Fact]
    public void At_home_the_steps_with_a_swing_wait_for_another_place() =>
        Assert.Contains("(half swings, full swings, changing clubs and targets and play)", Said("steps-wait-for-room", s => s with { Room = Room.Home }), StringComparison.Ordinal);

    [Fact]
    public void On_the_course_swings_are_practice_swings()
    {
        Assert.NotNull(Said("course-practice-swings", s => s with { Room = Room.Course }));
        Assert.Null(Said("course-practice-swings", s => s));
    }

    [Fact]
    public void A_range_with_time_leaves_nothing_out() => Assert.DoesNotContain(Draft(s => s).Cautions, c => c.Id.StartsWith("steps-wait", StringComparison.Ordinal));

    [Fact]
    public void No_time_for_any_drill() => Assert.Contains("shaft lean", Said("too-little-time", s => s with { MinutesPerWeek = 3 }), StringComparison.Ordinal);

    [Fact]
    public void Time_for_slow_work_but_not_for_full_swings() =>
        Assert.Contains("full swings", Said("steps-wait-for-coach", s => s with { MinutesPerWeek = 7, DaysPerWeek = 1 }), StringComparison.Ordinal);

    [Fact]
    public void Everything_that_suits_was_tried_in_vain()
    {
        var draft = Draft(s => s, tried: [.. Ladder().Select(d => new TriedDrill(d, 9, TriedOutcome.NoChange))]);
        Assert.Contains(draft.Cautions, c => c.Id == "tried-enough" && c.Text.Contains("shaft lean", StringComparison.Ordinal));
        Assert.Contains(draft.Parked, p => p.Reason == ParkedReason.NoDrill);
    }

    [Fact]
    public void Every_drill_would_push_another_fault_further_out() =>
        Assert.Contains(Draft(s => s, HouseBook.Value("lag-angle", 130, 20)).Cautions, c => c.Id == "would-push-another");

    [Fact]
    public void A_limit_of_today_says_when_the_next_steps_open()
    {
        var draft = Draft(s => s with { Limits = [new BodyLimit(Region.LeadKnee, LimitStatus.Current)] });
        Assert.Contains(draft.Cautions, c => c.Id == "limit-current" && c.Text.Contains("the next steps open", StringComparison.Ordinal));
        Assert.DoesNotContain(draft.Cautions, c => c.Id.StartsWith("steps-wait", StringComparison.Ordinal));
    }

    private static string? Said(string caution, Func<StudentFacts, StudentFacts> student) => Draft(student).Cautions.FirstOrDefault(c => c.Id == caution)?.Text;

    /// <summary>A handle too far ahead and nothing else.</summary>
    private static Draft Draft(Func<StudentFacts, StudentFacts> student, MeasuredValue? also = null, IReadOnlyList<TriedDrill>? tried = null)
    {
        var facts = HouseBook.Lesson(Club.Iron, [HouseBook.Value("impact-shaft-lean", 24), .. also is null ? [] : new[] { also }]);
        return Drafter.Draft(HouseBook.Compiled, facts with { Student = student(facts.Student), Tried = tried ?? [] });
    }

    private static IEnumerable<DrillId> Ladder() => HouseBook.Book.For(FaultId.Parse("impact-shaft-lean.high"))!.Rungs.Where(r => r.Stage < Stage.Mix).SelectMany(r => r.Drills).Distinct();
}
