using CoachOffice.Domain.Media;

namespace CoachOffice.UseCases.Media;

/// <summary>Bytes to be shown.</summary>
/// <param name="Bytes">Open for reading from any place on; whoever asked disposes it.</param>
/// <param name="Format">What they are.</param>
/// <param name="Name">A name for the file that says nothing about a person.</param>
/// <param name="Sha256">Changes whenever the bytes do.</param>
public sealed record OpenedMedia(Stream Bytes, MediaFormat Format, string Name, string Sha256);
