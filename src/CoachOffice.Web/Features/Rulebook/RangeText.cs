using CoachOffice.Domain.Measuring;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Rulebook;

/// <summary>A band as short as a table cell wants it.</summary>
internal static class RangeText
{
    /// <summary>E.g. "From 60 years", "Beginner".</summary>
    public static string Who(RangeAdjustment rule)
    {
        var levels = rule.Levels is null ? "" : string.Join(" and ", rule.Levels.Select(level => Domain.Terms.Of(level)));
        var age = rule.FromAge > 0 ? $"from {rule.FromAge} years" : "";
        var who = string.Join(", ", new[] { levels, age }.Where(part => part.Length > 0));
        return char.ToUpperInvariant(who[0]) + who[1..];
    }

    public static string Of(Limits limits, Unit unit) => (limits.Low, limits.High) switch
    {
        ({ } low, { } high) => $"{UnitText.Metric.Number(low, unit)} to {UnitText.Metric.Number(high, unit)}",
        ({ } low, null) => $"≥ {UnitText.Metric.Number(low, unit)}",
        (null, { } high) => $"≤ {UnitText.Metric.Number(high, unit)}",
        _ => "none",
    };
}
