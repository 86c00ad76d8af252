using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Insight.Compare;

/// <summary>One measure in two lessons.</summary>
/// <param name="Measure">Which.</param>
/// <param name="Before">As it was; null when it was not read.</param>
/// <param name="After">As it is; null when it was not read.</param>
public sealed record ComparedMeasure(Measure Measure, Finding? Before, Finding? After)
{
    /// <summary>After less before, in the measure's unit; null when one is missing.</summary>
    public double? Change => After is { } after && Before is { } before ? Math.Round(after.Value.Value - before.Value.Value, 9) : null;

    /// <summary>The change reading error alone rarely makes (95 %): 1.96 times the root of both squared errors, which for two single readings is the 2.77 of Bland and Altman (1996) and Weir (2005).</summary>
    public double? SmallestRealChange => After is { } after && Before is { } before ? 1.96 * Math.Sqrt((before.StandardError * before.StandardError) + (after.StandardError * after.StandardError)) : null;

    /// <summary>True when it changed by more.</summary>
    public bool IsReal => Change is { } change && Math.Abs(change) > SmallestRealChange;
}
