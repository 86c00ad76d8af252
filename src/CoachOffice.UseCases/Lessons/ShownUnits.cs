using System.Globalization;
using System.Text;
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

    /// <summary>What stands for a swing that was not read.</summary>
    public const char NotRead = '-';

    /// <summary>Readings of one measure as they stand in its field: by swing, a dash where one was not read.</summary>
    public static string Text(IEnumerable<Reading> readings, Unit own, Unit shown)
    {
        ArgumentNullException.ThrowIfNull(readings);
        var text = new StringBuilder();
        var next = 1;
        foreach (var reading in readings.OrderBy(r => r.Swing))
        {
            for (; next < reading.Swing; next++) text.Append(NotRead).Append(' ');
            text.Append(Number(new Quantity(reading.Value, own).In(shown).Value)).Append(' ');
            next = reading.Swing + 1;
        }

        return text.ToString().TrimEnd();
    }

    /// <summary>A value in a sentence, as fine as it can be read: 14.5°, 3.2 cm, 1.44.</summary>
    public static string Said(Quantity value)
    {
        var decimals = value.Unit == Unit.RevolutionPerMinute ? 0 : value.Unit == Unit.Ratio || value.Unit == Unit.Second ? 2 : 1;
        var number = Math.Round((decimal)value.Value, decimals, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture);
        return value.Unit == Unit.Degree ? $"{number}°" : value.Unit == Unit.Ratio ? number : $"{number} {value.Unit}";
    }

    /// <summary>At most two decimals, a point, never an exponent.</summary>
    public static string Number(double value) => Math.Round((decimal)value, Decimals, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture);
}
