using System.Globalization;

namespace CoachOffice.UseCases.Media;

/// <summary>An amount of bytes as people say it.</summary>
public static class MediaSize
{
    private const double Million = 1e6;
    private const double Thousand = 1e3;

    /// <summary>"840 kB", "3.2 MB", "12.5 GB".</summary>
    public static string Said(long bytes) => bytes switch
    {
        < 1_000_000 => string.Create(CultureInfo.InvariantCulture, $"{Math.Ceiling(bytes / Thousand)} kB"),
        < 1_000_000_000 => string.Create(CultureInfo.InvariantCulture, $"{bytes / Million:0.#} MB"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{bytes / Million / Thousand:0.#} GB"),
    };
}
