using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Benchmarks.Engine;

/// <summary>The patterns of a book laid out flat, by precedence: what a program written by hand for just these patterns would have in its tables.</summary>
internal sealed class HandTable
{
    private readonly List<HandTest> _tests = [];
    private readonly List<Objection> _objections = [];
    private readonly List<int> _rows = [];
    private readonly Dictionary<MeasureId, int> _rowOf;
    private readonly Dictionary<PatternId, int> _numbers;

    public HandTable(Rulebook book)
    {
        _rowOf = book.Measures.Select((m, i) => (m.Id, i)).ToDictionary();
        Measures = [.. book.Measures.Select(m => m.Id)];
        Patterns = [.. book.Patterns.OrderBy(p => p.Precedence).ThenBy(p => p.Id.Value, StringComparer.Ordinal)];
        _numbers = Patterns.Select((p, i) => (p.Id, i)).ToDictionary();
        Starts = [.. Patterns.Select(Lay)];
        Clubs = [.. Patterns.Select(p => p.Clubs.Count == 0 ? ~0 : p.Clubs.Aggregate(0, (set, club) => set | (1 << (int)club)))];
        Named = [.. Patterns.Select(Names)];
        (Tests, Objections, Rows) = ([.. _tests], [.. _objections], [.. _rows]);
        ByRow = [.. book.Measures.Select((_, row) => Enumerable.Range(0, Patterns.Length).Where(p => Speaks(p, row)).ToArray())];
    }

    public Pattern[] Patterns { get; }

    public MeasureId[] Measures { get; }

    public HandTest[] Tests { get; }

    /// <summary>What a test says when it stands against its pattern, made once.</summary>
    public Objection[] Objections { get; }

    public int[] Rows { get; }

    /// <summary>Where the tests of each pattern begin: `when`, `needs`, `unless`, the end.</summary>
    public (int When, int Needs, int Unless, int End)[] Starts { get; }

    /// <summary>A bit for each club a pattern speaks of.</summary>
    public int[] Clubs { get; }

    /// <summary>By pattern and row: `when` names the measure.</summary>
    public bool[][] Named { get; }

    /// <summary>By row: the patterns of which a finding of the measure can be what speaks for them.</summary>
    public int[][] ByRow { get; }

    private (int When, int Needs, int Unless, int End) Lay(Pattern pattern)
    {
        // Branches lie apart, so that the tests of one pattern follow each other.
        var when = pattern.When.Select(c => (Test: One(c, false), Objection: new Objection(c, false))).ToList();
        var needs = pattern.Needs.Select(m => new StateCondition(m, MeasureState.InRange)).Select(c => (Test: One(c, false), Objection: new Objection(c, false))).ToList();
        var unless = pattern.Unless.Select(c => (Test: One(c, true), Objection: new Objection(c, true))).ToList();
        var start = _tests.Count;
        foreach (var (test, objection) in when.Concat(needs).Concat(unless)) Add(test, objection);
        return (start, start + when.Count, start + when.Count + needs.Count, _tests.Count);
    }

    private void Add(HandTest test, Objection objection)
    {
        _tests.Add(test);
        _objections.Add(objection);
    }

    private HandTest One(Condition condition, bool excludes) => condition switch
    {
        OutCondition c => new() { Kind = HandTestKind.Out, Row = _rowOf[c.Measure], Side = c.Side, AtLeast = Math.Max(1, c.AtLeast - Grade.Mild + 1) },
        ValueCondition c => new() { Kind = HandTestKind.Beyond, Row = _rowOf[c.Measure], Side = c.Side, Bound = c.Bound },
        StateCondition c => new() { Kind = StateOf(c.State), Row = _rowOf[c.Measure], Excludes = excludes },
        ReadingsCondition c => new() { Kind = HandTestKind.Counted, Row = _rowOf[c.Measure], AtLeast = c.AtLeast },
        OthersInRangeCondition c => new() { Kind = HandTestKind.Others, AtLeast = c.AtLeast },
        SameSideCondition c => SameSide(c),
        AnyOfCondition c => Any(c, excludes),
        FiredCondition c => new() { Kind = HandTestKind.Fired, Row = _numbers[c.Pattern] },
        _ => throw new InvalidOperationException($"No test for {condition.GetType().Name}."),
    };

    private static HandTestKind StateOf(MeasureState state) => state switch
    {
        MeasureState.InRange => HandTestKind.InRange,
        MeasureState.NotInRange => HandTestKind.NotInRange,
        MeasureState.Measured => HandTestKind.Measured,
        _ => HandTestKind.NotMeasured,
    };

    private HandTest SameSide(SameSideCondition condition)
    {
        var from = _rows.Count;
        _rows.AddRange(condition.Measures.Select(m => _rowOf[m]));
        return new() { Kind = HandTestKind.SameSide, From = from, To = _rows.Count };
    }

    private HandTest Any(AnyOfCondition condition, bool excludes)
    {
        var branches = condition.Any.Select(c => One(c, excludes)).ToList();
        var from = _tests.Count;
        foreach (var (branch, inner) in branches.Zip(condition.Any)) Add(branch, new Objection(inner, excludes));
        return new() { Kind = HandTestKind.Any, From = from, To = _tests.Count };
    }

    private bool[] Names(Pattern pattern, int number)
    {
        var named = new bool[Measures.Length];
        for (var i = Starts[number].When; i < Starts[number].Needs; i++) Name(_tests[i], named);
        return named;
    }

    private void Name(HandTest test, bool[] named)
    {
        if (test.Kind == HandTestKind.Any) for (var i = test.From; i < test.To; i++) Name(_tests[i], named);
        else if (test.Kind == HandTestKind.SameSide) for (var i = test.From; i < test.To; i++) named[_rows[i]] = true;
        else if (test.Kind is not (HandTestKind.Others or HandTestKind.Fired)) named[test.Row] = true;
    }

    private bool Speaks(int pattern, int row)
    {
        for (var i = Starts[pattern].When; i < Starts[pattern].Needs; i++)
        {
            if (Speaks(_tests[i], row)) return true;
        }

        return false;
    }

    private bool Speaks(HandTest test, int row) => test.Kind switch
    {
        HandTestKind.Any => Enumerable.Range(test.From, test.To - test.From).Any(i => Speaks(_tests[i], row)),
        HandTestKind.SameSide => Enumerable.Range(test.From, test.To - test.From).Any(i => _rows[i] == row),
        HandTestKind.Out or HandTestKind.Beyond => test.Row == row,
        _ => false,
    };
}
