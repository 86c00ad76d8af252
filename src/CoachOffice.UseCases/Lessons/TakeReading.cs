using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Lessons;

/// <summary>One measure read from one take.</summary>
/// <param name="Measure">What was read.</param>
/// <param name="Value">In the measure's own unit.</param>
/// <param name="Instrument">With what.</param>
public sealed record TakeReading(Measure Measure, Quantity Value, Instrument Instrument);
