using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Words;

/// <summary>Findings as short facts in the trace.</summary>
internal static class FactText
{
    /// <summary>E.g. <c>impact-spine-tilt.low moderate</c>, or <c>head-drift 4 cm in-range (derived)</c>.</summary>
    public static string Of(Finding finding)
    {
        var derived = finding.IsDerived ? " (derived)" : "";
        return finding.Fault is { } fault
            ? $"{fault} {Terms.Of(finding.Grade)}{derived}"
            : string.Create(CultureInfo.InvariantCulture, $"{finding.Measure.Id.Value} {finding.Value} {Terms.Of(finding.Grade)}{derived}");
    }
}
