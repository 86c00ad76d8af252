using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>Holds one condition against a lesson in plain C#, and notes on what that rests. The rule engine has its own way; tests hold the two against each other.</summary>
internal sealed class ConditionTest(LessonContext lesson, Pattern pattern, Func<PatternId, bool> fires)
{
    public Truth Of(Condition condition, MatchNotes? notes = null) => condition switch
    {
        OutCondition c => lesson.Find(c.Measure) is { } f ? Speaks(FindingTest.Holds(c, f), f, notes) : Unread(c.Measure, notes),
        ValueCondition c => lesson.Find(c.Measure) is { } f ? Speaks(FindingTest.Holds(c, f), f, notes) : Unread(c.Measure, notes),
        StateCondition c => State(c, notes),
        ReadingsCondition c => lesson.Find(c.Measure) is { } f ? Plain(FindingTest.Holds(c, f)) : Unread(c.Measure, notes),
        OthersInRangeCondition c => Plain(CountOthersInRange(lesson, pattern) >= c.AtLeast),
        SameSideCondition c => SameSide(c, notes),
        AnyOfCondition c => Any(c, notes, excludes: false),
        FiredCondition c => Plain(fires(c.Pattern)),
        _ => throw new InvalidOperationException($"No test for {condition.GetType().Name}."),
    };

    /// <summary>A condition under `unless`: "not in range" is also true of what nobody read, and that may not rule a pattern out.</summary>
    public Truth OfExclusion(Condition condition, MatchNotes? notes = null) => condition switch
    {
        StateCondition { State: MeasureState.NotInRange } c => lesson.Find(c.Measure) is { } f ? Plain(FindingTest.Holds(c, f)) : Unread(c.Measure, notes),
        AnyOfCondition c => Any(c, notes, excludes: true),
        _ => Of(condition, notes),
    };

    /// <summary>Measures the pattern's `when` does not name, read and in range. Derived ones would count the same reading twice.</summary>
    public static int CountOthersInRange(LessonContext lesson, Pattern pattern)
    {
        var named = NamedIn(pattern).ToHashSet();
        return lesson.Findings.Count(f => f.Grade == Grade.InRange && !f.IsDerived && !named.Contains(f.Measure.Id));
    }

    /// <summary>The measures a pattern's `when` names.</summary>
    public static IEnumerable<MeasureId> NamedIn(Pattern pattern) => pattern.When.SelectMany(Named);

    private static IEnumerable<MeasureId> Named(Condition condition) => condition switch
    {
        OutCondition c => [c.Measure],
        ValueCondition c => [c.Measure],
        ReadingsCondition c => [c.Measure],
        StateCondition c => [c.Measure],
        SameSideCondition c => c.Measures,
        AnyOfCondition c => c.Any.SelectMany(Named),
        _ => [],
    };

    private static Truth Plain(bool holds) => holds ? Truth.Yes : Truth.No;

    private static Truth Speaks(bool holds, Finding finding, MatchNotes? notes)
    {
        if (holds) notes?.Saw(finding);
        return Plain(holds);
    }

    private static Truth Unread(MeasureId measure, MatchNotes? notes)
    {
        notes?.Misses(measure);
        return Truth.Unmeasured;
    }

    private Truth State(StateCondition condition, MatchNotes? notes)
    {
        if (lesson.Find(condition.Measure) is { } finding) return Plain(FindingTest.Holds(condition, finding));
        return condition.State is MeasureState.NotInRange or MeasureState.NotMeasured ? Truth.Yes : Unread(condition.Measure, notes);
    }

    private Truth SameSide(SameSideCondition condition, MatchNotes? notes)
    {
        var (side, open) = (Side.None, false);
        foreach (var measure in condition.Measures)
        {
            if (lesson.Find(measure) is not { } finding) open = true;
            else if (!finding.IsOut || (side != Side.None && finding.Side != side)) return Truth.No;
            else side = finding.Side;
        }

        if (notes is not null)
        {
            foreach (var finding in condition.Measures.Select(lesson.Find).OfType<Finding>()) notes.Saw(finding);
            NoteUnread(condition, notes);
        }

        return open ? Truth.Unmeasured : Truth.Yes;
    }

    private void NoteUnread(SameSideCondition condition, MatchNotes notes)
    {
        foreach (var measure in condition.Measures.Where(m => lesson.Find(m) is null)) notes.Misses(measure);
    }

    /// <summary>Only the branches that decide leave notes: those that hold, else those that wait for readings.</summary>
    private Truth Any(AnyOfCondition condition, MatchNotes? notes, bool excludes)
    {
        var truth = Truth.No;
        foreach (var branch in condition.Any)
        {
            var one = Branch(branch, null, excludes);
            if (one == Truth.Yes) truth = Truth.Yes;
            else if (one == Truth.Unmeasured && truth == Truth.No) truth = Truth.Unmeasured;
        }

        if (notes is not null && truth != Truth.No)
        {
            foreach (var branch in condition.Any) if (Branch(branch, null, excludes) == truth) Note(branch, truth, notes, excludes);
        }

        return truth;
    }

    private void Note(Condition branch, Truth truth, MatchNotes notes, bool excludes)
    {
        if (truth == Truth.Unmeasured && branch is SameSideCondition same) NoteUnread(same, notes);
        else Branch(branch, notes, excludes);
    }

    private Truth Branch(Condition branch, MatchNotes? notes, bool excludes) => excludes ? OfExclusion(branch, notes) : Of(branch, notes);
}
