using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Reading;

/// <summary>A rulebook as it serves: read without a fault, its text kept, named by the hash of its meaning.</summary>
/// <param name="Book">The rulebook.</param>
/// <param name="Text">The files it was read from.</param>
/// <param name="Sha256">SHA-256 of the canonical form, lower-case hexadecimal: comments, layout, order of entries and split over files do not change it.</param>
/// <param name="Cases">The worked cases beside the patterns.</param>
public sealed record LoadedRulebook(Rulebook Book, RulebookText Text, string Sha256, IReadOnlyList<PatternCase> Cases);
