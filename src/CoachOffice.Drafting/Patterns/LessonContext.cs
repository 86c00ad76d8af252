using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>One lesson as patterns see it: the club and its findings, one per measure. A class on purpose: the rule engine tells facts apart by reference.</summary>
public sealed class LessonContext
{
    private readonly Finding?[] _byRow;

    /// <summary>Of findings with one value per measure.</summary>
    public LessonContext(Club club, IReadOnlyList<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        Club = club;
        _byRow = new Finding?[findings.Count == 0 ? 0 : findings.Max(f => f.Measure.Row) + 1];
        foreach (var finding in findings) Put(finding);
        Findings = [.. _byRow.OfType<Finding>()];
        NoFault = findings.Any(IsNoFault) ? [.. findings.Where(IsNoFault).OrderBy(f => f.Measure.Row).Select(f => f.Fault!.Value)] : [];
    }

    /// <summary>The club group.</summary>
    public Club Club { get; }

    /// <summary>Findings by row of the measure; a side declared no fault is measured, but neither in nor out.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The finding of a measure, or null when it was neither read nor follows from others.</summary>
    public Finding? Find(MeasureId measure)
    {
        // Some dozen findings are looked through sooner than a table of them is made.
        foreach (var finding in Findings) if (finding.Measure.Id.Value == measure.Value) return finding;
        return null;
    }

    /// <summary>The finding of the measure in a row of the rulebook's table, or null.</summary>
    public Finding? At(int row) => (uint)row < (uint)_byRow.Length ? _byRow[row] : null;

    /// <summary>The finding when exactly this fault is there by more than reading error.</summary>
    public Finding? Out(FaultId fault) => Find(fault.Measure) is { IsOut: true } finding && finding.Side == fault.Side ? finding : null;

    /// <summary>Readings beyond an edge on a side declared no fault.</summary>
    public IReadOnlyList<FaultId> NoFault { get; }

    /// <summary>All faults that are there by more than reading error, by row.</summary>
    public IEnumerable<Finding> AllOut => Findings.Where(f => f.IsOut);

    /// <summary>The measure of a row is out on this side (None: on either) by at least this weight.</summary>
    public bool IsOut(int row, Side side, int weight) => At(row) is { IsOut: true } finding && finding.Weight >= weight && (side == Side.None || finding.Side == side);

    /// <summary>The measure of a row is out on the side of a bound, and its value lies beyond it.</summary>
    public bool IsBeyond(int row, ValueCondition bound)
    {
        ArgumentNullException.ThrowIfNull(bound);
        return IsOut(row, bound.Side, 1) && (bound.Side == Side.Low ? At(row)!.Value.Value < bound.Bound : At(row)!.Value.Value > bound.Bound);
    }

    /// <summary>The measure of a row was read or follows from others.</summary>
    public bool IsKnown(int row) => At(row) is not null;

    /// <summary>The measure of a row is known and in range.</summary>
    public bool IsInRange(int row) => At(row) is { Grade: Grade.InRange };

    /// <summary>The measure of a row is the mean of at least so many swings.</summary>
    public bool IsRead(int row, int atLeast) => At(row) is { } finding && finding.Readings >= atLeast;

    /// <summary>At least so many measures were read, none of these rows, and are in range.</summary>
    public bool AreInRange(IReadOnlyList<int> otherThan, int atLeast)
    {
        ArgumentNullException.ThrowIfNull(otherThan);
        return Findings.Count(f => f is { Grade: Grade.InRange, IsDerived: false } && !otherThan.Contains(f.Measure.Row)) >= atLeast;
    }

    private void Put(Finding finding)
    {
        if (_byRow[finding.Measure.Row] is not null) throw new ArgumentException($"Two values of '{finding.Measure.Id.Value}'.", nameof(finding));
        _byRow[finding.Measure.Row] = WithoutSidesThatAreNoFault(finding);
    }

    private static bool IsNoFault(Finding finding) => finding.Fault is not null && finding.Measure.NoFaultSides.Contains(finding.Side);

    private static Finding WithoutSidesThatAreNoFault(Finding finding) =>
        IsNoFault(finding)
            ? new Finding
            {
                Measure = finding.Measure,
                Value = finding.Value,
                Readings = finding.Readings,
                StandardError = finding.StandardError,
                Range = finding.Range,
                Side = Side.None,
                Grade = Grade.NoRange,
                OutsideBy = 0,
                Step = finding.Step,
                ChanceOutside = finding.ChanceOutside,
                IsDerived = finding.IsDerived,
            }
            : finding;
}
