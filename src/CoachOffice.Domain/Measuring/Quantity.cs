using System.Globalization;

namespace CoachOffice.Domain.Measuring;

/// <summary>A number with its unit. Never NaN or infinite.</summary>
public readonly record struct Quantity
{
    /// <summary>A quantity; throws <see cref="ArgumentOutOfRangeException"/> for NaN and infinities.</summary>
    public Quantity(double value, Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        if (!double.IsFinite(value)) throw new ArgumentOutOfRangeException(nameof(value), "A quantity is a finite number.");
        Value = value;
        Unit = unit;
    }

    /// <summary>The number, in <see cref="Unit"/>.</summary>
    public double Value { get; }

    /// <summary>The unit.</summary>
    public Unit Unit { get; }

    /// <summary>The same amount in another unit of the same dimension; throws <see cref="ArgumentException"/> otherwise.</summary>
    public Quantity In(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        if (unit.Dimension != Unit.Dimension) throw new ArgumentException($"{Unit} does not convert to {unit}.", nameof(unit));
        return unit == Unit ? this : new Quantity(Convert(Value, Unit.ToBase, unit.ToBase), unit);
    }

    /// <summary>In decimals where they reach, so that 12.1 in is 30.734 cm and not a hair less.</summary>
    private static double Convert(double value, double from, double to) =>
        Math.Abs(value) is > 1e-9 and < 1e12 ? Tidy((double)(Exact(value) * Exact(from) / Exact(to))) : value * from / to;

    // One factor, 1000 m in 3600 s, has no last digit: without this 162 km/h were 45.000000000000007 m/s.
    private static double Tidy(double value) => double.Parse(value.ToString("G15", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static decimal Exact(double value) => decimal.Parse(value.ToString("R", CultureInfo.InvariantCulture), NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>Shortest exact number and unit, invariant culture.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Value} {Unit}");
}
