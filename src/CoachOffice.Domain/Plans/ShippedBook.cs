using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>The files of a rulebook that came with a version of the program. Insert-only.</summary>
/// <param name="Sha256">Hash of the bundled text, lower hex; the key.</param>
/// <param name="Text">All files in one bundle.</param>
/// <param name="KeptAt">When this practice first saw it; the newest is the one new editions are built on.</param>
public sealed record ShippedBook(string Sha256, string Text, Instant KeptAt);
