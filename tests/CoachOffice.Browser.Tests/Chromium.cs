using PuppeteerSharp;

namespace CoachOffice.Browser.Tests;

/// <summary>One headless Chromium for the whole run: the system's own, never a download.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] Arguments =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update",
        "--disable-sync", "--disable-dev-shm-usage", "--force-color-profile=srgb", "--hide-scrollbars",
    ];

    private IBrowser? _browser;

    /// <summary>Where it is, or null: then browser tests are skipped and say so.</summary>
    public static string? Path { get; } =
        new[] { Environment.GetEnvironmentVariable("COACHOFFICE_CHROMIUM"), "/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome" }.FirstOrDefault(File.Exists);

    public async ValueTask InitializeAsync()
    {
        if (Path is null) return;
        _browser = await Puppeteer.LaunchAsync(new LaunchOptions { ExecutablePath = Path, Headless = true, Args = Arguments });
    }

    /// <summary>A window of its own: no cookie, no storage shared with another.</summary>
    public async Task<Window> Open()
    {
        if (_browser is null) Assert.Skip("no Chromium: install the package 'chromium' or set COACHOFFICE_CHROMIUM");
        var context = await _browser!.CreateBrowserContextAsync();
        return await Window.In(context);
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null) await _browser.CloseAsync();
    }
}
