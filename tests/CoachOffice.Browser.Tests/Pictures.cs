using PuppeteerSharp;

namespace CoachOffice.Browser.Tests;

/// <summary>Screenshots for a person to look at, in artifacts/screens (not in the repository) when COACHOFFICE_PICTURES names a folder.</summary>
internal static class Pictures
{
    private static readonly string? Folder = Environment.GetEnvironmentVariable("COACHOFFICE_PICTURES");

    public static async Task Keep(IPage page, string name)
    {
        if (string.IsNullOrEmpty(Folder)) return;
        Directory.CreateDirectory(Folder);
        await page.ScreenshotAsync(Path.Combine(Folder, name + ".png"), new ScreenshotOptions { FullPage = true });
    }
}
