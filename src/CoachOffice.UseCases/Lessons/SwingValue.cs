using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons;

/// <summary>What was read from one swing.</summary>
/// <param name="Swing">Which, from 1.</param>
/// <param name="Value">In the measure's own unit.</param>
public sealed record SwingValue(int Swing, Quantity Value);
