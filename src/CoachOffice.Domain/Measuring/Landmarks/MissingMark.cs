namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>What stands between a still and a value.</summary>
/// <param name="Moment">On the still of which moment.</param>
/// <param name="Landmark">What is not marked there; null when that still itself is missing.</param>
public sealed record MissingMark(Moment Moment, Landmark? Landmark);
