namespace CoachOffice.Domain.Measuring;

/// <summary>What kind of thing a unit measures; only units of one dimension convert into each other.</summary>
public enum Dimension
{
    Angle,
    Length,
    Speed,
    Ratio,
    Share,
    RotationRate,
    Duration,
}
