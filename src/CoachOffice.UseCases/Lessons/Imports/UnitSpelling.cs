using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Units as heads of columns write them.</summary>
internal static class UnitSpelling
{
    private static readonly Dictionary<string, Unit> Spellings = new(StringComparer.OrdinalIgnoreCase)
    {
        ["°"] = Unit.Degree,
        ["º"] = Unit.Degree,
        ["degree"] = Unit.Degree,
        ["degrees"] = Unit.Degree,
        ["mps"] = Unit.MetrePerSecond,
        ["m/sec"] = Unit.MetrePerSecond,
        ["kmh"] = Unit.KilometrePerHour,
        ["kph"] = Unit.KilometrePerHour,
        ["yds"] = Unit.Yard,
        ["yard"] = Unit.Yard,
        ["yards"] = Unit.Yard,
        ["feet"] = Unit.Foot,
        ["meters"] = Unit.Metre,
        ["metres"] = Unit.Metre,
        ["inch"] = Unit.Inch,
        ["inches"] = Unit.Inch,
        ["percent"] = Unit.Percent,
    };

    /// <summary>The unit, or null when the text is none.</summary>
    public static Unit? Find(string text)
    {
        var bare = text.Trim().Trim('[', ']', '(', ')').Trim();
        return Unit.Find(bare) ?? Unit.Find(bare.ToLowerInvariant()) ?? Spellings.GetValueOrDefault(bare);
    }
}
