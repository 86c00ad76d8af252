using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Benchmarks.Engine;

/// <summary>
/// Which patterns fire and which nearly do, as a program written by hand for speed alone would find out: flat tables, no rule engine, no condition objects. Only patterns that one of the lesson's
/// findings of some weight can speak for are looked at, by an index over the measures; a pattern is given up at the second thing against it; only what fires or nearly does is put into objects.
/// </summary>
internal sealed class HandProgram(Rulebook book)
{
    private const int Open = 2;

    private readonly HandTable _table = new(book);

    [ThreadStatic]
    private static HandLesson? t_lesson;

    /// <summary>The same as the drafter's own way of judging a lesson's patterns.</summary>
    public Judged Judge(LessonContext context)
    {
        var lesson = t_lesson ??= new HandLesson();
        lesson.Set(context, _table);
        List<Pattern> fired = [];
        List<PatternMatch> matches = [];
        var suspects = lesson.Suspects;
        for (var word = 0; word < suspects.Length; word++)
        {
            for (var set = suspects[word]; set != 0; set &= set - 1)
            {
                var pattern = (word * 64) + System.Numerics.BitOperations.TrailingZeroCount(set);
                if ((_table.Clubs[pattern] & (1 << (int)context.Club)) == 0 || !IsNear(lesson, pattern)) continue;
                var match = Match(lesson, pattern);
                if (match.Holds) fired.Add(match.Pattern);
                matches.Add(match);
            }
        }

        return new Judged(fired, matches);
    }

    /// <summary>A finding of weight speaks for it, and no more than one thing stands against it, or only readings are missing.</summary>
    private bool IsNear(HandLesson lesson, int pattern)
    {
        var (when, _, unless, end) = _table.Starts[pattern];
        var (against, open, heavy) = (0, 0, false);
        for (var i = when; i < end; i++)
        {
            var truth = Test(lesson, _table.Tests[i], pattern);
            if (i >= unless) against += truth == 1 ? 1 : 0;
            else if (truth == Open) open++;
            else if (truth == 0) against++;
            if (against > 1 || (against == 1 && open > 0)) return false;
            if (i < unless && truth != 0 && !heavy) heavy = IsHeavy(lesson, _table.Tests[i], truth);
        }

        return heavy;
    }

    private bool Holds(HandLesson lesson, int pattern)
    {
        if (lesson.Known[pattern] is var known and not 0) return known == 1;
        var holds = (_table.Clubs[pattern] & (1 << (int)lesson.Club)) != 0 && HoldsNow(lesson, pattern);
        lesson.Known[pattern] = holds ? (sbyte)1 : (sbyte)-1;
        return holds;
    }

    private bool HoldsNow(HandLesson lesson, int pattern)
    {
        var (when, _, unless, end) = _table.Starts[pattern];
        var heavy = false;
        for (var i = when; i < end; i++)
        {
            var truth = Test(lesson, _table.Tests[i], pattern);
            if (i >= unless ? truth == 1 : truth != 1) return false;
            if (i < unless && !heavy) heavy = IsHeavy(lesson, _table.Tests[i], truth);
        }

        return heavy;
    }

    /// <summary>0 no, 1 yes, 2 not known as nobody read it.</summary>
    private int Test(HandLesson lesson, in HandTest test, int pattern)
    {
        switch (test.Kind)
        {
            case HandTestKind.Out: return lesson.Weight[test.Row] < 0 ? Open : lesson.Weight[test.Row] >= test.AtLeast && (test.Side == Side.None || lesson.Side[test.Row] == test.Side) ? 1 : 0;
            case HandTestKind.Beyond: return lesson.Weight[test.Row] < 0 ? Open : lesson.Weight[test.Row] > 0 && lesson.Side[test.Row] == test.Side && (test.Side == Side.Low ? lesson.Value[test.Row] < test.Bound : lesson.Value[test.Row] > test.Bound) ? 1 : 0;
            case HandTestKind.InRange: return lesson.Weight[test.Row] < 0 ? Open : lesson.InRange[test.Row] ? 1 : 0;
            case HandTestKind.NotInRange: return lesson.Weight[test.Row] < 0 ? (test.Excludes ? Open : 1) : lesson.InRange[test.Row] ? 0 : 1;
            case HandTestKind.Measured: return lesson.Weight[test.Row] < 0 ? Open : 1;
            case HandTestKind.NotMeasured: return lesson.Weight[test.Row] < 0 ? 1 : 0;
            case HandTestKind.Counted: return lesson.Weight[test.Row] < 0 ? Open : lesson.Readings[test.Row] >= test.AtLeast ? 1 : 0;
            case HandTestKind.Others: return lesson.OthersInRange(_table.Named[pattern]) >= test.AtLeast ? 1 : 0;
            case HandTestKind.SameSide: return SameSide(lesson, test);
            case HandTestKind.Fired: return Holds(lesson, test.Row) ? 1 : 0;
            default: return Any(lesson, test, pattern);
        }
    }

    private int Any(HandLesson lesson, in HandTest test, int pattern)
    {
        var open = 0;
        for (var i = test.From; i < test.To; i++)
        {
            var truth = Test(lesson, _table.Tests[i], pattern);
            if (truth == 1) return 1;
            open |= truth;
        }

        return open;
    }

    private int SameSide(HandLesson lesson, in HandTest test)
    {
        var (side, open) = (Side.None, false);
        for (var i = test.From; i < test.To; i++)
        {
            var row = _table.Rows[i];
            if (lesson.Weight[row] < 0) open = true;
            else if (lesson.Weight[row] == 0 || (side != Side.None && lesson.Side[row] != side)) return 0;
            else side = lesson.Side[row];
        }

        return open ? Open : 1;
    }

    private bool IsHeavy(HandLesson lesson, in HandTest test, int truth)
    {
        switch (test.Kind)
        {
            case HandTestKind.Out or HandTestKind.Beyond: return truth == 1 && lesson.Weight[test.Row] >= 2;
            case HandTestKind.SameSide:
                for (var i = test.From; i < test.To; i++) if (lesson.Weight[_table.Rows[i]] >= 2) return true;
                return false;
            case HandTestKind.Any:
                for (var i = test.From; truth == 1 && i < test.To; i++) if (Test(lesson, _table.Tests[i], 0) == 1 && IsHeavy(lesson, _table.Tests[i], 1)) return true;
                return false;
            default: return false;
        }
    }

    private PatternMatch Match(HandLesson lesson, int pattern)
    {
        var (when, _, unless, end) = _table.Starts[pattern];
        List<Finding> matched = [];
        List<MeasureId> missing = [], passed = [];
        List<Objection> against = [];
        for (var i = when; i < end; i++)
        {
            var truth = Test(lesson, _table.Tests[i], pattern);
            if (truth == Open) Missing(lesson, _table.Tests[i], pattern, i < unless ? missing : passed);
            else if (truth == (i < unless ? 0 : 1)) against.Add(_table.Objections[i]);
            if (i < unless && truth != 0) Matched(lesson, _table.Tests[i], truth, matched);
        }

        matched.Sort(static (a, b) => a.Measure.Row.CompareTo(b.Measure.Row));
        return new PatternMatch { Pattern = _table.Patterns[pattern], Holds = against.Count + missing.Count == 0, Matched = matched, Missing = missing, Passed = passed, Objections = against };
    }

    private void Missing(HandLesson lesson, in HandTest test, int pattern, List<MeasureId> into)
    {
        if (test.Kind == HandTestKind.Any)
        {
            for (var i = test.From; i < test.To; i++) if (Test(lesson, _table.Tests[i], pattern) == Open) Missing(lesson, _table.Tests[i], pattern, into);
        }
        else if (test.Kind == HandTestKind.SameSide)
        {
            for (var i = test.From; i < test.To; i++) if (lesson.Weight[_table.Rows[i]] < 0) Add(into, _table.Measures[_table.Rows[i]]);
        }
        else Add(into, _table.Measures[test.Row]);
    }

    private void Matched(HandLesson lesson, in HandTest test, int truth, List<Finding> into)
    {
        if (test.Kind == HandTestKind.Any)
        {
            for (var i = test.From; truth == 1 && i < test.To; i++) if (Test(lesson, _table.Tests[i], 0) == 1) Matched(lesson, _table.Tests[i], 1, into);
        }
        else if (test.Kind == HandTestKind.SameSide)
        {
            for (var i = test.From; i < test.To; i++) if (lesson.Weight[_table.Rows[i]] >= 0) Add(into, lesson.Finding[_table.Rows[i]]!);
        }
        else if (truth == 1 && test.Kind is HandTestKind.Out or HandTestKind.Beyond) Add(into, lesson.Finding[test.Row]!);
    }

    private static void Add<T>(List<T> list, T item)
    {
        if (!list.Contains(item)) list.Add(item);
    }
}
