using CoachOffice.Domain.Measuring;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>A band as short as a table cell wants it.</summary>
internal static class RangeText
{
    public static string Of(Limits limits, Unit unit) => (limits.Low, limits.High) switch
    {
        ({ } low, { } high) => $"{UnitText.Metric.Number(low, unit)} to {UnitText.Metric.Number(high, unit)}",
        ({ } low, null) => $"≥ {UnitText.Metric.Number(low, unit)}",
        (null, { } high) => $"≤ {UnitText.Metric.Number(high, unit)}",
        _ => "none",
    };
}
