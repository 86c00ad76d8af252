using System.Runtime.InteropServices;

namespace CoachOffice.Domain.Measuring.Landmarks;

/// <summary>A place in a picture, in pixels from its upper left corner; parts of a pixel are fine.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Downward.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Pixel(double X, double Y)
{
    public static Pixel operator +(Pixel one, Pixel other) => new(one.X + other.X, one.Y + other.Y);

    public static Pixel operator -(Pixel one, Pixel other) => new(one.X - other.X, one.Y - other.Y);

    /// <summary>The distance from the corner.</summary>
    public double Length => Math.Sqrt((X * X) + (Y * Y));
}
