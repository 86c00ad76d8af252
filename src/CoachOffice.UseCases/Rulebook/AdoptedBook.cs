namespace CoachOffice.UseCases.Rulebook;

/// <summary>What came of looking at the shipped rulebook.</summary>
/// <param name="Sha256">The book now in force.</param>
/// <param name="IsNew">True when it came into force just now.</param>
public sealed record AdoptedBook(string Sha256, bool IsNew);
