using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Patterns;

/// <summary>One lesson as patterns see it: the club and its findings, one per measure. A class on purpose: the rule engine tells facts apart by reference.</summary>
public sealed class LessonContext
{
    private readonly Dictionary<MeasureId, Finding> _byMeasure;

    /// <summary>Of findings with one value per measure.</summary>
    public LessonContext(Club club, IReadOnlyList<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        Club = club;
        NoFault = [.. findings.Where(IsNoFault).OrderBy(f => f.Measure.Row).Select(f => f.Fault!.Value)];
        Findings = [.. findings.Select(WithoutSidesThatAreNoFault).OrderBy(f => f.Measure.Row)];
        _byMeasure = Findings.ToDictionary(f => f.Measure.Id);
    }

    /// <summary>The club group.</summary>
    public Club Club { get; }

    /// <summary>Findings by row of the measure; a side declared no fault is measured, but neither in nor out.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The finding of a measure, or null when it was neither read nor follows from others.</summary>
    public Finding? Find(MeasureId measure) => _byMeasure.GetValueOrDefault(measure);

    /// <summary>The finding when exactly this fault is there by more than reading error.</summary>
    public Finding? Out(FaultId fault) => Find(fault.Measure) is { IsOut: true } finding && finding.Side == fault.Side ? finding : null;

    /// <summary>Readings beyond an edge on a side declared no fault.</summary>
    public IReadOnlyList<FaultId> NoFault { get; }

    /// <summary>All faults that are there by more than reading error, by row.</summary>
    public IEnumerable<Finding> AllOut => Findings.Where(f => f.IsOut);

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
