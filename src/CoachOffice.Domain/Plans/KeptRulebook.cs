using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>The text of a rulebook, kept by its hash so that an old plan can be drafted again. Insert-only.</summary>
/// <param name="Sha256">Hash of the canonical form, lower hex; the key.</param>
/// <param name="Text">The files in one bundle: all of them, or only the practice's own where a shipped book is named.</param>
/// <param name="KeptAt">When it was first seen.</param>
/// <param name="ShippedSha256">The shipped book that holds the other files; null when there are none.</param>
public sealed record KeptRulebook(string Sha256, string Text, Instant KeptAt, string? ShippedSha256 = null);
