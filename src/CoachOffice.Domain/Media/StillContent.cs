namespace CoachOffice.Domain.Media;

/// <summary>A still's bytes: the picture and a small one to find it by.</summary>
/// <param name="Picture">The picture, upright and without anything but its pixels.</param>
/// <param name="Small">A small JPEG of it.</param>
/// <param name="Width">Of the picture, in pixels.</param>
/// <param name="Height">Of the picture, in pixels.</param>
public sealed record StillContent(KeptContent Picture, KeptContent Small, int Width, int Height);
