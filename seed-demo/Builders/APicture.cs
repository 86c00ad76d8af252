using SkiaSharp;

namespace CoachOffice.SeedDemo.Builders;

/// <summary>Plain pictures to stand for stills.</summary>
public static class APicture
{
    /// <summary>A picture that is red on its left half and blue on its right, so that one sees how it was turned.</summary>
    public static byte[] RedAndBlue(int width, int height, SKEncodedImageFormat format = SKEncodedImageFormat.Jpeg)
    {
        using var pixels = new SKBitmap(width, height);
        using var canvas = new SKCanvas(pixels);
        canvas.Clear(SKColors.Blue);
        using var red = new SKPaint { Color = SKColors.Red };
        canvas.DrawRect(0, 0, width / 2f, height, red);
        canvas.Flush();
        using var image = SKImage.FromBitmap(pixels);
        using var data = image.Encode(format, 90);
        return data.ToArray();
    }
}
