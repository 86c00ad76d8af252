using NodaTime;

namespace CoachOffice.UseCases.Measuring.Answers;

/// <summary>What a student sends of a re-test.</summary>
/// <param name="Retest">Which.</param>
/// <param name="Readings">As typed: one value a swing.</param>
/// <param name="On">The day of the swings.</param>
public sealed record RetestAnswer(Guid Retest, string Readings, LocalDate On);
