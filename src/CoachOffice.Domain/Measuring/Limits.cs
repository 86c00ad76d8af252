namespace CoachOffice.Domain.Measuring;

/// <summary>A closed band of numbers in a measure's unit; a missing end is open.</summary>
/// <param name="Low">Lowest value inside, or null.</param>
/// <param name="High">Highest value inside, or null.</param>
public sealed record Limits(double? Low, double? High)
{
    /// <summary>Edges are inside.</summary>
    public bool Contains(double value) => !(value < Low) && !(value > High);
}
