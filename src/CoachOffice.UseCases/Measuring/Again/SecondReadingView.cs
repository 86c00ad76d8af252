using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Measuring.Again;

/// <summary>A take to read again. It names no value, so that the second reading knows nothing of the first.</summary>
/// <param name="Version">The version it is answered at.</param>
/// <param name="Take">Which.</param>
/// <param name="Fields">What was read from it.</param>
public sealed record SecondReadingView(int Version, WaitingTake Take, IReadOnlyList<FieldAgain> Fields);

/// <summary>One measure to read again.</summary>
/// <param name="Measure">Which.</param>
/// <param name="Unit">The unit it is typed in.</param>
/// <param name="Instrument">With what it was read, and is to be read again.</param>
/// <param name="TakesAsRead">An angle from the ground makes sense.</param>
public sealed record FieldAgain(Measure Measure, Unit Unit, Instrument Instrument, bool TakesAsRead);
