using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>The text of a rulebook, kept by its hash so that an old plan can be drafted again. Insert-only.</summary>
/// <param name="Sha256">Hash of the canonical form, lower hex; the key.</param>
/// <param name="Text">All files in one bundle.</param>
/// <param name="KeptAt">When it was first seen.</param>
public sealed record KeptRulebook(string Sha256, string Text, Instant KeptAt);
