using System.Globalization;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons;

/// <summary>In which unit the practice reads a measure, and how numbers stand in a field.</summary>
public static class ShownUnits
{
    private const int Decimals = 2;

    /// <summary>The measure's own unit, or its imperial counterpart.</summary>
    public static Unit For(Unit unit, UnitSystem system) => system == UnitSystem.Metric ? unit
        : unit == Unit.MetrePerSecond ? Unit.MilePerHour
        : unit == Unit.Centimetre ? Unit.Inch
        : unit == Unit.Metre ? Unit.Yard
        : unit;

    /// <summary>Readings of one measure as they stand in its field, by swing.</summary>
    public static string Text(IEnumerable<Reading> readings, Unit own, Unit shown) =>
        string.Join(' ', readings.OrderBy(r => r.Swing).Select(r => Number(new Quantity(r.Value, own).In(shown).Value)));

    /// <summary>At most two decimals, a point, never an exponent.</summary>
    public static string Number(double value) => Math.Round((decimal)value, Decimals, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture);
}
