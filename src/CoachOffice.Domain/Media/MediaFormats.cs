namespace CoachOffice.Domain.Media;

/// <summary>What is known of each format.</summary>
public static class MediaFormats
{
    /// <summary>So many first bytes are enough for <see cref="Recognise"/>.</summary>
    public const int HeadLength = 64;

    /// <summary>The format these first bytes belong to, or null: signatures of JPEG (ITU-T T.81), PNG (RFC 2083), WebP (RFC 9649), the ISO base media file format (ISO/IEC 14496-12) and WebM (an EBML header whose document type says so).</summary>
    public static MediaFormat? Recognise(ReadOnlySpan<byte> head)
    {
        if (head.StartsWith((ReadOnlySpan<byte>)[0xFF, 0xD8, 0xFF])) return MediaFormat.Jpeg;
        if (head.StartsWith((ReadOnlySpan<byte>)[0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A])) return MediaFormat.Png;
        if (head.Length >= 12 && head.StartsWith("RIFF"u8) && head[8..12].SequenceEqual("WEBP"u8)) return MediaFormat.WebP;
        if (head.Length >= 12 && head[4..8].SequenceEqual("ftyp"u8)) return Branded(head[8..12]);
        return head.StartsWith((ReadOnlySpan<byte>)[0x1A, 0x45, 0xDF, 0xA3]) && head.IndexOf("webm"u8) > 0 ? MediaFormat.WebM : null;
    }

    /// <summary>The type an answer states; it is never guessed from anything else.</summary>
    public static string ContentType(this MediaFormat format) => format switch
    {
        MediaFormat.Jpeg => "image/jpeg",
        MediaFormat.Png => "image/png",
        MediaFormat.WebP => "image/webp",
        MediaFormat.Mp4 => "video/mp4",
        MediaFormat.QuickTime => "video/quicktime",
        _ => "video/webm",
    };

    /// <summary>The ending of a file's name, without a dot.</summary>
    public static string Ending(this MediaFormat format) => format switch
    {
        MediaFormat.Jpeg => "jpg",
        MediaFormat.QuickTime => "mov",
        _ => Terms.Of(format).Replace("-", "", StringComparison.Ordinal),
    };

    /// <summary>Whether it holds one picture or moving ones.</summary>
    public static MediaKind Kind(this MediaFormat format) => format is MediaFormat.Jpeg or MediaFormat.Png or MediaFormat.WebP ? MediaKind.Still : MediaKind.Clip;

    // Brands of still pictures in the same container (heic, avif) are none of these.
    private static MediaFormat? Branded(ReadOnlySpan<byte> brand)
    {
        if (brand.SequenceEqual("qt  "u8)) return MediaFormat.QuickTime;
        ReadOnlySpan<byte> iso = "iso"u8;
        return brand.StartsWith(iso) || brand.StartsWith("mp4"u8) || brand.StartsWith("avc1"u8) || brand.StartsWith("M4V"u8) || brand.StartsWith("dash"u8) ? MediaFormat.Mp4 : null;
    }
}
