using System.Globalization;
using System.Text.Json;
using Deque.AxeCore.Commons;
using PuppeteerSharp;
using PuppeteerSharp.Media;

namespace CoachOffice.Browser.Tests;

/// <summary>A browser window that remembers every complaint of the page: script errors, broken files, refused content.</summary>
public sealed class Window : IAsyncDisposable
{
    private static readonly (string Name, int Width, int Height)[] Sizes = [("desk", 1280, 800), ("tablet", 820, 1180), ("phone", 390, 844)];

    private readonly IBrowserContext _context;
    private readonly List<string> _complaints = [];

    private Window(IBrowserContext context, IPage page)
    {
        _context = context;
        Page = page;
    }

    public IPage Page { get; }

    /// <summary>What the browser complained about so far: nothing is the only good answer.</summary>
    public IReadOnlyList<string> Complaints => _complaints;

    public static async Task<Window> In(IBrowserContext context)
    {
        ArgumentNullException.ThrowIfNull(context);
        var page = await context.NewPageAsync();
        page.DefaultTimeout = 20_000;
        var window = new Window(context, page);
        page.Console += (_, e) =>
        {
            if (e.Message.Type == ConsoleType.Error && !e.Message.Text.Contains("the server responded with a status of 4", StringComparison.Ordinal)) window._complaints.Add($"{page.Url}: {e.Message.Text}");
        };
        page.PageError += (_, e) => window._complaints.Add($"{page.Url}: {e.Message}");
        await window.Resize("desk");
        return window;
    }

    /// <summary>Looks at the page at all three sizes: no axe violation, nothing wider than the screen, a picture of each.</summary>
    public async Task LookAt(string name)
    {
        foreach (var (size, _, _) in Sizes)
        {
            await Resize(size);
            await Pictures.Keep(Page, $"{name}-{size}");
            var wide = await Page.EvaluateExpressionAsync<int>("document.documentElement.scrollWidth - document.documentElement.clientWidth");
            Assert.True(wide <= 0, $"{name} at {size}: {wide} px wider than the screen");
        }

        await Resize("desk");
        var violations = await AxeViolations();
        Assert.True(violations.Count == 0, string.Join("\n", violations));
    }

    // Touch and mobile stay as they are: changing them would load the page again and lose what was typed.
    public Task Resize(string size)
    {
        var (_, width, height) = Sizes.Single(s => s.Name == size);
        return Page.SetViewportAsync(new ViewPortOptions { Width = width, Height = height });
    }

    public Task Print(string path) => Page.PdfAsync(path, new PdfOptions { Format = PaperFormat.A4, PrintBackground = true });

    public async ValueTask DisposeAsync() => await _context.CloseAsync();

    private async Task<IReadOnlyList<string>> AxeViolations()
    {
        await Page.EvaluateExpressionAsync(new BundledAxeScriptProvider().GetScript());
        var found = await Page.EvaluateExpressionAsync<JsonElement>(
            "axe.run(document, { resultTypes: ['violations'] }).then(r => r.violations.map(v => v.id + ': ' + v.nodes.map(n => n.target.join(' ') + ' ' + n.failureSummary).join(' | ')))");
        return [.. found.EnumerateArray().Select(v => string.Create(CultureInfo.InvariantCulture, $"{Page.Url} {v.GetString()}"))];
    }
}
