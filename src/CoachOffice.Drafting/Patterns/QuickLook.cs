using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>One pattern with its conditions bound to the rows of the table of measures, to tell quickly whether it nearly holds.</summary>
internal sealed class QuickLook
{
    private readonly Func<MeasureId, int> _rowOf;
    private readonly RowTest[] _wanted;
    private readonly RowTest[] _unless;

    public QuickLook(Pattern pattern, Func<MeasureId, int> rowOf)
    {
        (Parts, _rowOf) = (new PatternParts(pattern), rowOf);
        _wanted = [.. Parts.When.Concat(Parts.Needs).Select(p => Bound(p.Condition!, excludes: false))];
        _unless = [.. Parts.Unless.Select(p => Bound(p.Condition!, excludes: true))];
    }

    private delegate Truth RowTest(LessonContext lesson, IReadOnlyList<Pattern> fired);

    public PatternParts Parts { get; }

    /// <summary>A finding of the measure in this row can be what speaks for the pattern.</summary>
    public bool CanSpeak(int row) => Parts.Pattern.When.Any(c => CanSpeak(c, row));

    /// <summary>It holds, or no more than one thing is against it, or only readings are missing.</summary>
    public bool IsNear(LessonContext lesson, IReadOnlyList<Pattern> fired)
    {
        if (!PatternEvaluator.SpeaksOf(Parts.Pattern, lesson.Club)) return false;
        var (against, open) = (0, 0);
        foreach (var test in _wanted)
        {
            var truth = test(lesson, fired);
            if (truth == Truth.No) against++;
            else if (truth == Truth.Unmeasured) open++;
            if (against > 1 || (against == 1 && open > 0)) return false;
        }

        foreach (var test in _unless)
        {
            if (test(lesson, fired) == Truth.Yes) against++;
            if (against > 1 || (against == 1 && open > 0)) return false;
        }

        return true;
    }

    /// <summary>The pattern of this id fired.</summary>
    public static bool Holds(PatternId id, IReadOnlyList<Pattern> fired)
    {
        foreach (var pattern in fired) if (pattern.Id.Value == id.Value) return true;
        return false;
    }

    private bool CanSpeak(Condition condition, int row) => condition switch
    {
        OutCondition c => _rowOf(c.Measure) == row,
        ValueCondition c => _rowOf(c.Measure) == row,
        SameSideCondition c => c.Measures.Any(m => _rowOf(m) == row),
        AnyOfCondition c => c.Any.Any(b => CanSpeak(b, row)),
        _ => false,
    };

    private RowTest Bound(Condition condition, bool excludes) => condition switch
    {
        OutCondition c => Of(c.Measure, finding => FindingTest.Holds(c, finding)),
        ValueCondition c => Of(c.Measure, finding => FindingTest.Holds(c, finding)),
        ReadingsCondition c => Of(c.Measure, finding => FindingTest.Holds(c, finding)),
        StateCondition c => Of(c.Measure, finding => FindingTest.Holds(c, finding), Unread(c.State, excludes)),
        AnyOfCondition c => Any([.. c.Any.Select(b => Bound(b, excludes))]),
        FiredCondition c => (_, fired) => Holds(c.Pattern, fired) ? Truth.Yes : Truth.No,
        _ => (lesson, _) => new ConditionTest(lesson, Parts.Pattern, id => false).Of(condition),
    };

    private static Truth Unread(MeasureState state, bool excludes) => state switch
    {
        MeasureState.NotMeasured => Truth.Yes,
        MeasureState.NotInRange when !excludes => Truth.Yes,
        _ => Truth.Unmeasured,
    };

    private RowTest Of(MeasureId measure, Func<Finding, bool> holds, Truth unread = Truth.Unmeasured)
    {
        var row = _rowOf(measure);
        return (lesson, _) => lesson.At(row) is not { } finding ? unread : holds(finding) ? Truth.Yes : Truth.No;
    }

    private static RowTest Any(RowTest[] branches) => (lesson, fired) =>
    {
        var truth = Truth.No;
        foreach (var branch in branches)
        {
            var one = branch(lesson, fired);
            if (one == Truth.Yes) return Truth.Yes;
            if (one == Truth.Unmeasured) truth = Truth.Unmeasured;
        }

        return truth;
    };
}
