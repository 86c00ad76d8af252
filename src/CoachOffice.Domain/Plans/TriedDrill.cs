namespace CoachOffice.Domain.Plans;

/// <summary>A drill the student has worked on before.</summary>
/// <param name="Drill">Which; may be unknown to the rulebook.</param>
/// <param name="Sessions">How many sessions.</param>
/// <param name="Outcome">What came of it.</param>
public sealed record TriedDrill(DrillId Drill, int Sessions, TriedOutcome Outcome);
