using System.Numerics;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>Everything one measure can say with one club, cut into cells inside which no condition of the book changes its answer. Cell 0 is "not read". A set of cells is a number with a bit for each.</summary>
internal sealed class MeasureCells
{
    private readonly List<Cell> _cells = [new Cell(null, null)];
    private readonly Dictionary<Condition, BigInteger> _holding = [];
    private readonly Club _club;
    private readonly BigInteger _low;
    private readonly BigInteger _high;

    /// <summary>The cells of a measure, graded as the drafter grades, from readings at every cut and between the cuts.</summary>
    public MeasureCells(Club club, IEnumerable<Cell> samples, IReadOnlyList<Condition> conditions)
    {
        _club = club;
        var known = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var sample in samples)
        {
            var name = $"{sample.Finding!.Side} {sample.Finding.Grade} {string.Concat(conditions.Select(c => Holds(sample, c) ? '1' : '0'))}";
            if (known.TryAdd(name, _cells.Count)) _cells.Add(sample);
            else if (Neater(sample.Reading!, _cells[known[name]].Reading!)) _cells[known[name]] = sample;
        }

        All = (BigInteger.One << _cells.Count) - 1;
        InRange = Where(f => f.Grade == Grade.InRange);
        Moderate = Where(f => f.Weight >= 2);
        _low = Where(f => f.IsOut && f.Side == Side.Low);
        _high = Where(f => f.IsOut && f.Side == Side.High);
    }

    public IReadOnlyList<Cell> Cells => _cells;

    /// <summary>All cells.</summary>
    public BigInteger All { get; }

    /// <summary>The cells in which the measure is read and in range.</summary>
    public BigInteger InRange { get; }

    /// <summary>The cells in which it is out by at least a moderate fault, on either side.</summary>
    public BigInteger Moderate { get; }

    /// <summary>The cells in which it is out on a side.</summary>
    public BigInteger Out(Side side) => side == Side.Low ? _low : _high;

    /// <summary>The cells in which a test of the finding holds; "not read" is never among them.</summary>
    public BigInteger Where(Func<Finding, bool> test) => Set(cell => cell.Finding is { } finding && test(finding));

    /// <summary>The cells in which a condition on this one measure holds, as the drafter's own test says.</summary>
    public BigInteger Where(Condition condition)
    {
        if (!_holding.TryGetValue(condition, out var known)) _holding.Add(condition, known = Set(cell => Holds(cell, condition)));
        return known;
    }

    /// <summary>The cells of a set.</summary>
    public IEnumerable<Cell> In(BigInteger set) => _cells.Where((_, i) => !((set >> i) & 1).IsZero);

    private BigInteger Set(Func<Cell, bool> test)
    {
        var set = BigInteger.Zero;
        for (var i = 0; i < _cells.Count; i++)
        {
            if (test(_cells[i])) set |= BigInteger.One << i;
        }

        return set;
    }

    private bool Holds(Cell cell, Condition condition)
    {
        var lesson = new LessonContext(_club, cell.Finding is null ? [] : [cell.Finding]);
        return new ConditionTest(lesson, NoPattern.One, _ => false).Of(condition) == Truth.Yes;
    }

    private static bool Neater(MeasuredValue one, MeasuredValue other) => Untidiness(one).CompareTo(Untidiness(other)) < 0;

    private static (int, int) Untidiness(MeasuredValue reading) =>
        (reading.Readings, reading.Value.Value.ToString(System.Globalization.CultureInfo.InvariantCulture).Length);
}
