using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>One thing a measure can say.</summary>
/// <param name="Reading">A reading that says so; null when it was not read.</param>
/// <param name="Finding">The same, graded.</param>
internal sealed record Cell(MeasuredValue? Reading, Finding? Finding);
