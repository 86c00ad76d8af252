using System.Globalization;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>Numbers as this practice reads them: stored metric, shown in the practice's units, rounded as the device shows them.</summary>
internal sealed class UnitText(UnitSystem system)
{
    public static UnitText Of(Practice? practice) => new(practice?.Units ?? UnitSystem.Metric);

    public static UnitText Metric { get; } = new(UnitSystem.Metric);

    /// <summary>Which units these are.</summary>
    public UnitSystem System => system;

    /// <summary>The unit a measure is shown in.</summary>
    public Unit ShownIn(Unit own)
    {
        if (system == UnitSystem.Metric) return own;
        if (own == Unit.Centimetre) return Unit.Inch;
        if (own == Unit.MetrePerSecond) return Unit.MilePerHour;
        return own == Unit.Metre ? Unit.Yard : own;
    }

    /// <summary>The number alone, e.g. "14.5".</summary>
    public string Number(double value, Unit own)
    {
        var unit = ShownIn(own);
        var rounded = Math.Round(new Quantity(value, own).In(unit).Value, Decimals(unit), MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString(CultureInfo.InvariantCulture).Replace("-", "−", StringComparison.Ordinal);
    }

    /// <summary>The unit as written after a number; empty for ratios.</summary>
    public string Symbol(Unit own)
    {
        var unit = ShownIn(own);
        if (unit == Unit.Degree) return "°";
        return unit == Unit.Ratio ? "" : unit.Symbol;
    }

    /// <summary>Number and unit, e.g. "14.5°" or "3 cm".</summary>
    public string Amount(double value, Unit own)
    {
        var symbol = Symbol(own);
        return symbol is "" or "°" ? Number(value, own) + symbol : $"{Number(value, own)} {symbol}";
    }

    /// <summary>A wanted band in words, e.g. "20 to 28°".</summary>
    public string Band(double? low, double? high, Unit own) => (low, high) switch
    {
        ({ } a, { } b) => $"{Number(a, own)} to {Amount(b, own)}",
        ({ } a, null) => $"{Amount(a, own)} or more",
        (null, { } b) => $"{Amount(b, own)} or less",
        _ => "no range for this club",
    };

    private static int Decimals(Unit unit)
    {
        if (unit == Unit.RevolutionPerMinute) return 0;
        if (unit == Unit.Second) return 3;
        return unit == Unit.Ratio ? 2 : 1;
    }
}
