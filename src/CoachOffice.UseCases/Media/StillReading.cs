using CoachOffice.Domain;
using CoachOffice.Domain.Media;
using SkiaSharp;

namespace CoachOffice.UseCases.Media;

/// <summary>
/// Reads an uploaded still and writes its pixels into a new file. The original is not kept: a telephone writes the place, the day and the device into it, which never
/// are needed here and could leave with it; a file made anew holds none of that, nor anything hidden behind a picture. It is also turned upright, so that
/// a point's pixel is the same for everybody, and at most <see cref="LongestSide"/> long, so that a click of three pixels stays one that a hand can make.
/// </summary>
public static class StillReading
{
    /// <summary>Longer pictures are made smaller; in pixels.</summary>
    public const int LongestSide = 2560;

    private const int ShortestSide = 64;
    private const int SmallSide = 320;
    private const long MostPixels = 64_000_000;
    private const int Quality = 92;
    private const int SmallQuality = 80;

    private static readonly Refusal Unreadable = new("still-unreadable", "That picture cannot be read; it may be damaged. Save it again as JPEG or PNG and take that.", "File");

    // A large picture takes a quarter of a gigabyte while it is read: one after the other.
    private static readonly SemaphoreSlim OneAtATime = new(1, 1);

    /// <summary>The still, or why it is refused.</summary>
    public static async Task<Outcome<ReadStill>> Of(ReadOnlyMemory<byte> file, CancellationToken stop = default)
    {
        if (MediaFormats.Recognise(file.Span[..Math.Min(file.Length, MediaFormats.HeadLength)]) is not { } format || format.Kind() != MediaKind.Still)
            return new Refusal("still-format", "A still is a JPEG, PNG or WebP picture; what a file is, its content says and not its name.", "File");
        await OneAtATime.WaitAsync(stop);
        try
        {
            return Read(file.Span, format);
        }
        finally
        {
            OneAtATime.Release();
        }
    }

    private static Outcome<ReadStill> Read(ReadOnlySpan<byte> file, MediaFormat format)
    {
        using var data = SKData.CreateCopy(file);
        using var codec = SKCodec.Create(data);
        if (codec is null || codec.EncodedFormat != Encoded(format)) return Unreadable;
        var (width, height) = (codec.Info.Width, codec.Info.Height);
        // Asked of the header, before a pixel is unpacked: a small file can say it holds a huge picture.
        if ((long)width * height > MostPixels) return new Refusal("still-too-many-pixels", $"That picture has {width} by {height} pixels; take one of at most {MostPixels / 1_000_000} million.", "File");
        if (Math.Min(width, height) < ShortestSide) return new Refusal("still-too-small", $"That picture has {width} by {height} pixels, too few to mark points on; take one of at least {ShortestSide} on each side.", "File");
        using var pixels = new SKBitmap(new SKImageInfo(width, height, SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()));
        if (codec.GetPixels(pixels.Info, pixels.GetPixels()) != SKCodecResult.Success) return Unreadable;
        using var upright = Drawn(pixels, codec.EncodedOrigin, LongestSide);
        using var small = Drawn(upright, SKEncodedOrigin.TopLeft, SmallSide);
        return new ReadStill(Written(upright, format, Quality), format, Written(small, MediaFormat.Jpeg, SmallQuality), upright.Width, upright.Height);
    }

    private static SKBitmap Drawn(SKBitmap from, SKEncodedOrigin origin, int longest)
    {
        var turned = origin is SKEncodedOrigin.LeftTop or SKEncodedOrigin.RightTop or SKEncodedOrigin.RightBottom or SKEncodedOrigin.LeftBottom;
        var (width, height) = turned ? (from.Height, from.Width) : (from.Width, from.Height);
        var scale = Math.Min(1f, (float)longest / Math.Max(width, height));
        var made = new SKBitmap(new SKImageInfo(Math.Max(1, (int)MathF.Round(width * scale)), Math.Max(1, (int)MathF.Round(height * scale)), SKColorType.Rgba8888, SKAlphaType.Premul, SKColorSpace.CreateSrgb()));
        using var canvas = new SKCanvas(made);
        // A see-through part would turn black in a JPEG.
        canvas.Clear(SKColors.White);
        canvas.Scale((float)made.Width / width, (float)made.Height / height);
        canvas.Concat(Turn(origin, from.Width, from.Height));
        using var image = SKImage.FromBitmap(from);
        canvas.DrawImage(image, 0, 0, new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear));
        return made;
    }

    /// <summary>The eight positions a camera can note (orientation 1 to 8 of the exchangeable image file format).</summary>
    private static SKMatrix Turn(SKEncodedOrigin origin, float width, float height) => origin switch
    {
        SKEncodedOrigin.TopRight => new SKMatrix(-1, 0, width, 0, 1, 0, 0, 0, 1),
        SKEncodedOrigin.BottomRight => new SKMatrix(-1, 0, width, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.BottomLeft => new SKMatrix(1, 0, 0, 0, -1, height, 0, 0, 1),
        SKEncodedOrigin.LeftTop => new SKMatrix(0, 1, 0, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightTop => new SKMatrix(0, -1, height, 1, 0, 0, 0, 0, 1),
        SKEncodedOrigin.RightBottom => new SKMatrix(0, -1, height, -1, 0, width, 0, 0, 1),
        SKEncodedOrigin.LeftBottom => new SKMatrix(0, 1, 0, -1, 0, width, 0, 0, 1),
        _ => SKMatrix.CreateIdentity(),
    };

    private static byte[] Written(SKBitmap pixels, MediaFormat format, int quality)
    {
        using var image = SKImage.FromBitmap(pixels);
        using var data = image.Encode(Encoded(format), quality);
        return data.ToArray();
    }

    private static SKEncodedImageFormat Encoded(MediaFormat format) => format switch
    {
        MediaFormat.Png => SKEncodedImageFormat.Png,
        MediaFormat.WebP => SKEncodedImageFormat.Webp,
        _ => SKEncodedImageFormat.Jpeg,
    };
}
