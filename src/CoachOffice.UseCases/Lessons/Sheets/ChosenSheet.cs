using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons.Sheets;

/// <summary>Which rows of the rulebook stand on a lesson's page: those of the sheet, and always every measure that has a value, so that none is hidden.</summary>
internal sealed class ChosenSheet
{
    private readonly HashSet<MeasureId>? _shown;

    private ChosenSheet(string key, HashSet<MeasureId>? shown) => (Key, _shown) = (key, shown);

    /// <summary>The sheet's key; empty when every measure is shown.</summary>
    public string Key { get; }

    public static ChosenSheet Of(string key, IReadOnlyList<SheetChoice> sheets, IEnumerable<MeasureId> besides) =>
        sheets.FirstOrDefault(s => s.Key == key) is { } sheet ? new ChosenSheet(sheet.Key, [.. sheet.Measures, .. besides]) : new ChosenSheet("", null);

    public bool Shows(Measure measure) => _shown?.Contains(measure.Id) ?? true;
}
