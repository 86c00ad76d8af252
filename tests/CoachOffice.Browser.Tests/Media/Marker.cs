using System.Globalization;
using System.Text.Json;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring.Landmarks;
using CoachOffice.SeedDemo.Builders;
using PuppeteerSharp;
using PuppeteerSharp.Input;

namespace CoachOffice.Browser.Tests.Media;

/// <summary>A coach who marks points on stills.</summary>
internal sealed class Marker(Person person)
{
    private ITouchHandle? _finger;

    public Person Person => person;

    public Window Window => person.Window;

    /// <summary>Opens the practice, adds a student and starts a lesson; gives its address.</summary>
    public async Task<string> StartsALesson()
    {
        await person.GoTo("/");
        await person.Type("Input.OwnerName", "Marianne Wetherby");
        await person.Type("Input.Email", "marianne@example.org");
        await person.Type("Input.Password", Person.Password);
        await person.Type("Input.PracticeName", "Hill Lane Golf Lessons");
        await person.Type("Input.Zone", "Europe/London");
        await person.Press("Open the practice");
        await person.GoTo("/students/new");
        await person.Type("Input.GivenName", "Ida");
        await person.Type("Input.FamilyName", "Sommerfeld");
        await person.Type("Input.Email", "ida@example.org");
        await person.Type("Input.BirthDate", "1988-06-14");
        await person.Press("Add the student");
        await person.Press("Record a lesson");
        await person.Press("Driver");
        return person.Path;
    }

    /// <summary>Chooses a picture's file and sends it; stands on the still's page then.</summary>
    public async Task AddsAStill(string lesson, DrawnStill drawn)
    {
        var file = Path.Combine(Path.GetTempPath(), $"{Path.GetRandomFileName()}.png");
        await File.WriteAllBytesAsync(file, drawn.Png());
        try
        {
            await person.GoTo(lesson + "/stills");
            await person.Type("Shows", $"{Terms.Of(drawn.Figure.View)}/{Terms.Of(drawn.Figure.Moment)}");
            await (await person.Page.QuerySelectorAsync("#File")).UploadFileAsync(file);
            await person.Press("Add the still");
        }
        finally
        {
            File.Delete(file);
        }

        Assert.StartsWith(lesson + "/stills/", person.Path, StringComparison.Ordinal);
        await person.Page.WaitForSelectorAsync("#picture.live");
    }

    /// <summary>Pastes a picture that was copied elsewhere, and stands on the page of its still.</summary>
    public async Task Pastes(byte[] png)
    {
        var arrived = person.Page.WaitForNavigationAsync(new NavigationOptions { WaitUntil = [WaitUntilNavigation.Load] });
        await person.Page.EvaluateFunctionAsync(
            """
            text => {
              const bytes = Uint8Array.from(atob(text), c => c.charCodeAt(0));
              const clipboardData = new DataTransfer();
              clipboardData.items.add(new File([bytes], 'image.png', { type: 'image/png' }));
              setTimeout(() => document.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true })), 0);
            }
            """,
            Convert.ToBase64String(png));
        await arrived;
        await person.Page.WaitForSelectorAsync("#picture.live");
    }

    /// <summary>The points that are not marked yet, in the order the page asks for them.</summary>
    public async Task<IReadOnlyList<Landmark>> Asked()
    {
        var words = await person.Page.EvaluateExpressionAsync<string[]>("[...document.querySelectorAll('[data-point]')].filter(r => r.querySelector('input').value === '').map(r => r.dataset.point)");
        return [.. words.Select(Terms.Parse<Landmark>)];
    }

    /// <summary>Clicks at a place of the picture, to a whole pixel of the screen.</summary>
    public async Task Clicks(Pixel at)
    {
        var (x, y) = await OnScreen(at);
        await person.Page.Mouse.ClickAsync(x, y);
    }

    /// <summary>Lays a finger on a place of the picture.</summary>
    public async Task Touches(Pixel at, bool lift)
    {
        var (x, y) = await OnScreen(at);
        _finger = await person.Page.Touchscreen.TouchStartAsync(x, y);
        await person.Page.Touchscreen.TouchMoveAsync(x + 2, y);
        if (lift) await Lifts();
    }

    public Task Lifts() => _finger is null ? Task.CompletedTask : person.Page.Touchscreen.TouchEndAsync();

    /// <summary>Whether the glass is seen.</summary>
    public Task<string> Glass() => person.Page.EvaluateExpressionAsync<string>("document.querySelector('.loupe').getAttribute('visibility')");

    /// <summary>The two numbers of a point.</summary>
    public async Task<(double X, double Y)> Fields(Landmark landmark)
    {
        var both = await person.Page.EvaluateFunctionAsync<double[]>("w => ['x', 'y'].map(s => Number(document.querySelector(`[name='${s}[${w}]']`).value))", Terms.Of(landmark));
        return (both[0], both[1]);
    }

    /// <summary>What the page says of a measure, once it has asked the server.</summary>
    public async Task<(string Name, double Value, double Click, double Camera)> Value(string measure)
    {
        await person.Page.WaitForFunctionAsync("m => document.querySelector(`[data-value-of='${m}'] strong`) !== null", measure);
        await person.Page.WaitForNetworkIdleAsync(new WaitForNetworkIdleOptions { IdleTime = 400 });
        var cells = await person.Page.EvaluateFunctionAsync<JsonElement>(
            "m => { const r = document.querySelector(`[data-value-of='${m}']`); return [r.querySelector('th').innerText.trim(), r.querySelector('strong').innerText, ...[...r.querySelectorAll('td')].slice(1).map(c => c.innerText)]; }", measure);
        var texts = cells.EnumerateArray().Select(c => c.GetString()!).ToList();
        return (texts[0], Number(texts[1]), Number(texts[2]), Number(texts[3]));
    }

    private static double Number(string text) => double.Parse(text.Replace("−", "-", StringComparison.Ordinal).Replace("°", "", StringComparison.Ordinal).Replace("cm", "", StringComparison.Ordinal).Trim(), CultureInfo.InvariantCulture);

    // Scrolled so that the place is in the middle of the window.
    private async Task<(int X, int Y)> OnScreen(Pixel at)
    {
        var place = await person.Page.EvaluateFunctionAsync<double[]>(
            """
            (x, y) => {
              const picture = document.getElementById('picture');
              const place = () => new DOMPoint(x, y).matrixTransform(picture.getScreenCTM());
              if (place().y < 80 || place().y > innerHeight - 80) window.scrollBy({ top: place().y - innerHeight / 2, behavior: 'instant' });
              return [place().x, place().y];
            }
            """,
            at.X,
            at.Y);
        return ((int)Math.Round(place[0]), (int)Math.Round(place[1]));
    }
}
