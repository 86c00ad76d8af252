using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>A rulebook this practice has had.</summary>
/// <param name="Sha256">Its name.</param>
/// <param name="KeptAt">When it was first seen.</param>
/// <param name="IsInForce">True for the one new drafts are made by.</param>
public sealed record RulebookEdition(string Sha256, Instant KeptAt, bool IsInForce);
