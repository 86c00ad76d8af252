using System.Net;
using System.Net.Http.Headers;
using AngleSharp.Dom;
using CoachOffice.SeedDemo.Builders;

namespace CoachOffice.Web.Tests.Media;

public sealed class StillsPageTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;

    public async ValueTask InitializeAsync() => _coach = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_still_is_added_seen_and_removed()
    {
        var lesson = await _coach.StartsALesson();
        await Adds(lesson);
        Assert.Contains("At the top, face-on, swing 1", _coach.Text, StringComparison.Ordinal);
        Assert.Contains("of at most 20 GB", _coach.Text, StringComparison.Ordinal);
        var picture = Picture();

        await _coach.Send(".stills form");

        Assert.Empty(_coach.Page.QuerySelectorAll(".stills li"));
        await _coach.Open(picture);
        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
    }

    [Fact]
    public async Task The_bytes_say_what_they_are_and_can_do_nothing_when_opened_alone()
    {
        await Adds(await _coach.StartsALesson());

        await _coach.Open(Picture());

        Assert.Equal((HttpStatusCode.OK, "image/jpeg"), (_coach.Status, _coach.Answer.Content.Headers.ContentType!.MediaType));
        Assert.Equal("inline", _coach.Answer.Content.Headers.ContentDisposition?.DispositionType);
        Assert.Matches("^still-[0-9a-f]{8}.jpg$", _coach.Answer.Content.Headers.ContentDisposition?.FileName ?? "");
        Assert.Equal("nosniff", _coach.Answer.Headers.GetValues("X-Content-Type-Options").Single());
        var policy = _coach.Answer.Headers.GetValues("Content-Security-Policy").Single();
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.Contains("sandbox", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src", policy, StringComparison.Ordinal);
        Assert.Equal("private, no-cache", _coach.Answer.Headers.CacheControl!.ToString().Replace("no-cache, private", "private, no-cache", StringComparison.Ordinal));

        await _coach.Open(_coach.Path, new EntityTagHeaderValue(_coach.Answer.Headers.ETag!.Tag));
        Assert.Equal(HttpStatusCode.NotModified, _coach.Status);
    }

    [Fact]
    public async Task The_desk_is_refused_and_a_stranger_is_sent_to_the_sign_in()
    {
        await Adds(await _coach.StartsALesson());
        var desk = await _coach.LetsIn(_office, "desk");
        await _coach.Open("/students");
        await _coach.Open(_coach.Page.QuerySelectorAll("main a").Select(a => a.GetAttribute("href")!).First(a => a.StartsWith("/students/", StringComparison.Ordinal) && Guid.TryParse(a.Split('/')[^1], out _)));
        await _coach.Open(_coach.Page.QuerySelectorAll(".story a").Select(a => a.GetAttribute("href")!).First() + "/stills");
        foreach (var address in new[] { Picture(), Picture() + "/small", _coach.Path })
        {
            await desk.Open(address);
            Assert.Equal(HttpStatusCode.Forbidden, desk.Status);
            var stranger = await _office.Stranger().GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken);
            Assert.Equal((HttpStatusCode.Found, "/sign-in"), (stranger.StatusCode, stranger.Headers.Location!.AbsolutePath));
        }
    }

    [Fact]
    public async Task What_is_no_picture_is_refused_with_what_would_be_one()
    {
        var lesson = await _coach.StartsALesson();
        await _coach.Open(lesson + "/stills");

        await _coach.SendFile("#add-still", ("File", "swing.jpg", "<svg onload=alert(1)>"u8.ToArray()), ("Shows", "face-on/top"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Contains("JPEG, PNG or WebP", _coach.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_minors_stills_wait_for_consent_and_are_hidden_and_offered_for_removal_when_it_ends()
    {
        var lesson = await StartsALessonOfAMinor();
        await _coach.Open(lesson + "/stills");
        Assert.Null(_coach.Page.QuerySelector("#add-still"));

        await _coach.Open(_coach.Page.QuerySelector(".warning a")!.GetAttribute("href")!);
        var consent = _coach.Path;
        Assert.Equal("Mara Oduya", _coach.Page.QuerySelector("[name='Input.GivenBy']")!.GetAttribute("value"));
        await _coach.Send("main form");
        await Adds(lesson);
        var picture = Picture();

        await _coach.Open(consent);
        await _coach.Send("form[action$='withdraw']");
        Assert.Contains("no longer shown", _coach.Text, StringComparison.Ordinal);
        await _coach.Open(picture);
        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
        await _coach.Open(lesson + "/stills");
        Assert.Empty(_coach.Page.QuerySelectorAll(".stills img"));
        Assert.NotEmpty(_coach.Page.QuerySelectorAll(".stills form"));
        await _coach.Open(consent);
        await _coach.Send("form[action$='remove']");
        Assert.Contains("One is removed for good", _coach.Text, StringComparison.Ordinal);
    }

    private async Task<string> StartsALessonOfAMinor()
    {
        await _coach.Open("/students/new");
        await _coach.Send(
            "main form",
            ("Input.GivenName", "Tomi"),
            ("Input.FamilyName", "Oduya"),
            ("Input.BirthDate", "2014-03-04"),
            ("Input.MinutesPerWeek", "60"),
            ("Input.DaysPerWeek", "2"),
            ("Input.Guardian.Name", "Mara Oduya"),
            ("Input.Guardian.Email", "mara@example.org"));
        await _coach.Open($"{_coach.Path}/lessons/new");
        await _coach.Send("main form", ("HeldOn", "2026-05-04"), ("Club", "driver"));
        Assert.StartsWith("/lessons/", _coach.Path, StringComparison.Ordinal);
        return _coach.Path;
    }

    private async Task Adds(string lesson)
    {
        await _coach.Open(lesson + "/stills");
        await _coach.SendFile("#add-still", ("File", "IMG_0001.JPG", APicture.RedAndBlue(400, 300)), ("Shows", "face-on/top"), ("Swing", "1"));
        Assert.Equal(HttpStatusCode.OK, _coach.Status);
        Assert.StartsWith(lesson + "/stills/", _coach.Path, StringComparison.Ordinal);
        await _coach.Open(lesson + "/stills");
    }

    private string Picture() => _coach.Page.QuerySelector(".stills img")!.GetAttribute("src")!.Replace("/small", "", StringComparison.Ordinal);
}
