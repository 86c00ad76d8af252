namespace CoachOffice.Domain.Media;

/// <summary>Bytes that lie in the media folder.</summary>
/// <param name="Sha256">Their SHA-256 in small hexadecimal digits, under which they lie there.</param>
/// <param name="Bytes">How many there are.</param>
/// <param name="Format">What they are, by their content.</param>
public sealed record KeptContent(string Sha256, long Bytes, MediaFormat Format);
