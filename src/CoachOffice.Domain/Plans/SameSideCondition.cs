using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>All these measures are out, and all on the same side.</summary>
public sealed record SameSideCondition(IReadOnlyList<MeasureId> Measures) : Condition;
