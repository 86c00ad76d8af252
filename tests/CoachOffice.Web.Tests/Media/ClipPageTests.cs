using System.Net;

namespace CoachOffice.Web.Tests.Media;

public sealed class ClipPageTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private string _lesson = "";
    private string _clip = "";

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        _lesson = await _coach.StartsALesson();
        await _coach.Open($"{_lesson}/clips");
        var bytes = new byte[4000];
        "\0\0\0\u0018ftypisom"u8.CopyTo(bytes);
        await _coach.SendFile("#add-clip", ("File", "swing.mp4", bytes));
        await _coach.Open($"{_lesson}/clips");
        _clip = _coach.Page.QuerySelector(".rows a")!.GetAttribute("href")!;
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_clip_belongs_to_the_take_it_shows_and_is_found_from_there()
    {
        await _coach.Open(_clip);
        await _coach.Send("main form", ("Seen", "down-the-line"), ("Swing", "2"));

        Assert.Equal("Swing 2, down the line", _coach.Page.QuerySelector("h1")!.TextContent);
        Assert.Equal(_clip, _coach.Page.QuerySelector("a.button")!.GetAttribute("href"));
        await _coach.Open($"{_lesson}/clips");
        Assert.Contains("swing 2, down the line", _coach.Page.QuerySelector(".rows")!.TextContent, StringComparison.Ordinal);
        await _coach.Open(_clip);
        Assert.Equal("2", _coach.Page.QuerySelector("#Swing")!.GetAttribute("value"));
        await _coach.Open(_lesson);
        Assert.Contains("Swing 2, down the line", _coach.Page.QuerySelector("#takes")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("face-on", "0")]
    [InlineData("face-on", "many")]
    [InlineData("either", "1")]
    [InlineData("device", "1")]
    public async Task What_no_clip_can_show_is_refused(string seen, string swing)
    {
        await _coach.Open(_clip);

        await _coach.Send("main form", ("Seen", seen), ("Swing", swing));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Equal(swing, _coach.Page.QuerySelector("#Swing")!.GetAttribute("value"));
    }
}
