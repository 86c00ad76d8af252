using CoachOffice.Drafting.Reading;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>A shipped book to build an edition on.</summary>
/// <param name="Sha256">Hash of its text.</param>
/// <param name="Files">Its files.</param>
public sealed record ShippedBase(string Sha256, RulebookText Files);
