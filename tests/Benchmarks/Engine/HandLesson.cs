using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Benchmarks.Engine;

/// <summary>One lesson as arrays by row of the measure, used again for the next one.</summary>
internal sealed class HandLesson
{
    private IReadOnlyList<Finding> _findings = [];
    private int _patterns;

    public Club Club { get; private set; }

    /// <summary>-1 when nobody read it.</summary>
    public int[] Weight { get; private set; } = [];

    public Side[] Side { get; private set; } = [];

    public bool[] InRange { get; private set; } = [];

    public double[] Value { get; private set; } = [];

    public int[] Readings { get; private set; } = [];

    public Finding?[] Finding { get; private set; } = [];

    /// <summary>Patterns known to hold (1) or not (-1).</summary>
    public sbyte[] Known { get; private set; } = [];

    /// <summary>A bit for each pattern that a finding of some weight may speak for.</summary>
    public ulong[] Suspects { get; private set; } = [];

    public void Set(LessonContext context, HandTable table)
    {
        Make(table);
        (Club, _findings) = (context.Club, context.Findings);
        Array.Fill(Weight, -1);
        Array.Clear(Known);
        Array.Clear(Suspects);
        for (var i = 0; i < _findings.Count; i++)
        {
            var finding = _findings[i];
            var row = finding.Measure.Row;
            var weight = finding.Weight;
            (Weight[row], Side[row], InRange[row], Value[row], Readings[row], Finding[row]) = (weight, finding.Side, finding.Grade == Grade.InRange, finding.Value.Value, finding.Readings, finding);
            if (weight < 2) continue;
            foreach (var pattern in table.ByRow[row]) Suspects[pattern >> 6] |= 1UL << (pattern & 63);
        }
    }

    public int OthersInRange(bool[] named)
    {
        var count = 0;
        for (var i = 0; i < _findings.Count; i++)
        {
            var finding = _findings[i];
            if (finding is { Grade: Grade.InRange, IsDerived: false } && !named[finding.Measure.Row]) count++;
        }

        return count;
    }

    private void Make(HandTable table)
    {
        if (Weight.Length == table.Measures.Length && _patterns == table.Patterns.Length) return;
        var rows = table.Measures.Length;
        (Weight, Side, InRange, Value, Readings, Finding) = (new int[rows], new Side[rows], new bool[rows], new double[rows], new int[rows], new Finding?[rows]);
        (_patterns, Known, Suspects) = (table.Patterns.Length, new sbyte[table.Patterns.Length], new ulong[(table.Patterns.Length + 63) / 64]);
    }
}
