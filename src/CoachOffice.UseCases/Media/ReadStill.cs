using CoachOffice.Domain.Media;

namespace CoachOffice.UseCases.Media;

/// <summary>A still that was read: its pixels written anew, and a small picture of it.</summary>
/// <param name="Picture">Upright, with nothing in the file but pixels.</param>
/// <param name="Format">Of the picture: the one it came in.</param>
/// <param name="Small">A small JPEG.</param>
/// <param name="Width">Of the picture, in pixels.</param>
/// <param name="Height">Of the picture, in pixels.</param>
public sealed record ReadStill(byte[] Picture, MediaFormat Format, byte[] Small, int Width, int Height);
