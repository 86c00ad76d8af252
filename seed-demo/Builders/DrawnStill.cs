using CoachOffice.Domain.Measuring.Landmarks;
using SkiaSharp;

namespace CoachOffice.SeedDemo.Builders;

/// <summary>A stick figure drawn to scale by a camera that was rolled a little.</summary>
/// <param name="Figure">What is drawn.</param>
/// <param name="Toward">The side of the picture the target or ball lies on: left for a left-handed player, or when the picture is mirrored.</param>
/// <param name="RollDegrees">How far the camera was rolled.</param>
public sealed record DrawnStill(StickStill Figure, PictureSide Toward = PictureSide.Right, double RollDegrees = 1.5)
{
    public const int Width = 900;
    public const int Height = 1100;
    private const double PixelsPerCm = 4.25;
    private const double Ground = 1010;

    private static readonly (Landmark, Landmark)[] Sticks =
    [
        (Landmark.BeltMiddle, Landmark.NeckBase), (Landmark.LeadHip, Landmark.TrailHip), (Landmark.LeadShoulder, Landmark.TrailShoulder), (Landmark.NeckBase, Landmark.HeadMiddle),
        (Landmark.LeadHip, Landmark.LeadHeel), (Landmark.TrailHip, Landmark.TrailHeel), (Landmark.LeadElbow, Landmark.LeadWrist), (Landmark.ShaftHigh, Landmark.ShaftLow),
        (Landmark.PlumbTop, Landmark.PlumbBottom), (Landmark.LengthStart, Landmark.LengthEnd), (Landmark.BeltMiddle, Landmark.Seat), (Landmark.ClubButt, Landmark.Ball),
    ];

    /// <summary>Where a point lies in the picture, to a fraction of a pixel.</summary>
    public Pixel At(Landmark landmark)
    {
        var (toward, up) = Figure.Points[landmark];
        var (x, y) = (toward * PixelsPerCm * (Toward == PictureSide.Right ? 1 : -1), -up * PixelsPerCm);
        var roll = RollDegrees * Math.PI / 180;
        return new Pixel((Width / 2d) + (x * Math.Cos(roll)) - (y * Math.Sin(roll)), Ground + (x * Math.Sin(roll)) + (y * Math.Cos(roll)));
    }

    /// <summary>The picture as a PNG.</summary>
    public byte[] Png()
    {
        using var pixels = new SKBitmap(Width, Height);
        using var canvas = new SKCanvas(pixels);
        using var stick = new SKPaint { Color = new SKColor(0x3A, 0x4A, 0x3F), StrokeWidth = 7, IsAntialias = true, StrokeCap = SKStrokeCap.Round };
        using var point = new SKPaint { Color = new SKColor(0xB0, 0x2A, 0x1E), StrokeWidth = 1.5f, IsAntialias = true };
        canvas.Clear(new SKColor(0xDC, 0xE6, 0xD2));
        foreach (var (one, other) in Sticks.Where(s => Figure.Points.ContainsKey(s.Item1) && Figure.Points.ContainsKey(s.Item2))) canvas.DrawLine(Place(one), Place(other), stick);
        foreach (var landmark in Figure.Points.Keys) Cross(canvas, Place(landmark), point);
        canvas.Flush();
        using var image = SKImage.FromBitmap(pixels);
        using var data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private SKPoint Place(Landmark landmark) => new((float)At(landmark).X, (float)At(landmark).Y);

    private static void Cross(SKCanvas canvas, SKPoint at, SKPaint paint)
    {
        canvas.DrawLine(at.X - 7, at.Y, at.X + 7, at.Y, paint);
        canvas.DrawLine(at.X, at.Y - 7, at.X, at.Y + 7, paint);
    }
}
