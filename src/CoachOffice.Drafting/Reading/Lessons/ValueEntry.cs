using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Reading.Lessons;

/// <summary>Reads <c>value</c> and <c>unit</c> into a measure's own unit and holds it against what is plausible.</summary>
internal static class ValueEntry
{
    /// <summary>The value in the unit wanted; zero with a fault when it cannot be read.</summary>
    public static Quantity Read(Entry entry, Unit wanted, Measure? measure)
    {
        var before = entry.Faults.Count;
        var value = entry.Number("value");
        var unit = entry.Require("unit") is { } node ? Single.UnitOf(node, entry.Faults) : wanted;
        if (entry.Faults.Count > before) return new Quantity(0, wanted);
        if (unit.Dimension != wanted.Dimension)
        {
            entry.Faults.Add(entry.Find("unit")!, $"{unit} is no unit of {measure?.Id.Value ?? "this"}; write one of: {Units(wanted)}");
            return new Quantity(0, wanted);
        }

        var converted = Converted(value, unit, wanted);
        if (measure is not null && !measure.Plausible.Contains(converted.Value)) entry.Faults.Add(entry.Find("value")!, Implausible(converted, measure));
        return converted;
    }

    // A finite number may still overflow on its way to a smaller unit; the largest double is as implausible.
    private static Quantity Converted(double value, Unit unit, Unit wanted)
    {
        var largest = double.MaxValue / Math.Max(1, unit.ToBase) * Math.Min(1, wanted.ToBase);
        return new Quantity(Math.Clamp(value, -largest, largest), unit).In(wanted);
    }

    private static string Implausible(Quantity value, Measure measure)
    {
        var limit = $"{measure.Id.Value} of {Single.Show(Math.Round(value.Value, 3))} {measure.Unit} is not plausible; the limits are {Single.Show(measure.Plausible)} {measure.Unit}";
        var tilted = measure.Id.Value.EndsWith("-spine-tilt", StringComparison.Ordinal) && measure.Plausible.Contains(value.Value - 90);
        return tilted ? $"{limit}: did you read it from the ground? A line read as {Single.Show(Math.Round(value.Value, 3))} from the ground is a tilt of {Single.Show(Math.Round(value.Value - 90, 3))}" : limit;
    }

    private static string Units(Unit wanted) => string.Join(", ", Unit.All.Where(u => u.Dimension == wanted.Dimension).Select(u => u.Symbol));
}
