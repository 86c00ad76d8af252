namespace CoachOffice.Domain.Measuring;

/// <summary>A unit from the closed table, with its exact factor to the base unit of its dimension (1 in = 25.4 mm, 1 yd = 914.4 mm, 1 mph = 0.44704 m/s).</summary>
public sealed record Unit
{
    private Unit(string symbol, Dimension dimension, double toBase)
    {
        Symbol = symbol;
        Dimension = dimension;
        ToBase = toBase;
    }

    /// <summary>As written in files and forms.</summary>
    public string Symbol { get; }

    /// <summary>Units convert only within their dimension.</summary>
    public Dimension Dimension { get; }

    /// <summary>How many base units one of this unit is.</summary>
    public double ToBase { get; }

    public static Unit Degree { get; } = new("deg", Dimension.Angle, 1);

    public static Unit Centimetre { get; } = new("cm", Dimension.Length, 10);

    public static Unit Millimetre { get; } = new("mm", Dimension.Length, 1);

    public static Unit Inch { get; } = new("in", Dimension.Length, 25.4);

    public static Unit Metre { get; } = new("m", Dimension.Length, 1000);

    public static Unit Yard { get; } = new("yd", Dimension.Length, 914.4);

    public static Unit Foot { get; } = new("ft", Dimension.Length, 304.8);

    public static Unit MetrePerSecond { get; } = new("m/s", Dimension.Speed, 1);

    public static Unit MilePerHour { get; } = new("mph", Dimension.Speed, 0.44704);

    public static Unit KilometrePerHour { get; } = new("km/h", Dimension.Speed, 1000.0 / 3600.0);

    public static Unit Ratio { get; } = new("ratio", Dimension.Ratio, 1);

    public static Unit Percent { get; } = new("%", Dimension.Share, 1);

    public static Unit RevolutionPerMinute { get; } = new("rpm", Dimension.RotationRate, 1);

    public static Unit Second { get; } = new("s", Dimension.Duration, 1);

    /// <summary>The whole table.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        Degree, Centimetre, Millimetre, Inch, MetrePerSecond, MilePerHour, KilometrePerHour,
        Metre, Yard, Foot, Ratio, Percent, RevolutionPerMinute, Second,
    ];

    /// <summary>The unit with this symbol, or null.</summary>
    public static Unit? Find(string? symbol) => All.FirstOrDefault(unit => unit.Symbol == symbol);

    /// <inheritdoc/>
    public override string ToString() => Symbol;
}
