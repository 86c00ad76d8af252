namespace CoachOffice.Domain.Media;

/// <summary>The formats that are taken, and no others. What a file is, its first bytes say, never its name or its sender.</summary>
public enum MediaFormat
{
    Jpeg,
    Png,
    WebP,
    Mp4,
    QuickTime,
    WebM,
}
