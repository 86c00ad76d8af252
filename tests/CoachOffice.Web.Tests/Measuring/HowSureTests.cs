using System.Net;

namespace CoachOffice.Web.Tests.Measuring;

public sealed class HowSureTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private string _take = "";

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        await _coach.StartsALesson();
        await _coach.Send("#sheet", ("readings[impact-spine-tilt]", "14"), ("readings[head-drift]", "3"));
        _take = _coach.Page.QuerySelector("#takes a")!.GetAttribute("href")!;
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Every_measure_says_what_one_reading_can_be_off_by()
    {
        await _coach.Open("/how-sure");

        // 2.9 is the root of 1.5 and 2.5 squared, 8.1 is 1.96 times the root of two of them; 2.77 times one reading's error (Bland and Altman 1996).
        var tilt = _coach.Page.QuerySelector("#impact-spine-tilt")!.TextContent;
        Assert.Contains("± 2.9°", tilt, StringComparison.Ordinal);
        Assert.Contains("from 8.1° with one swing each time", tilt, StringComparison.Ordinal);

        // Own geometry: the arc tangent of tan 35 times sin 5 and sin 10.
        Assert.Contains("5° moves it by up to 3.5°, 10° by up to 6.9°", tilt, StringComparison.Ordinal);
        Assert.Contains("No take waits", _coach.Page.QuerySelector("#waiting-name")!.ParentElement!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_take_is_read_again_without_sight_of_the_first()
    {
        await _coach.Open(_take);
        await _coach.Send("form[action*=again]");
        Assert.Contains("waits to be read again", _coach.Page.QuerySelector(".notice")!.TextContent, StringComparison.Ordinal);
        await _coach.Open("/how-sure");
        var again = _coach.Page.QuerySelector(".rows a")!.GetAttribute("href")!;
        await _coach.Open(again);
        Assert.DoesNotContain("14", _coach.Page.QuerySelector("form.sheet")!.InnerHtml, StringComparison.Ordinal);

        await _coach.Send("form.sheet", ("readings[impact-spine-tilt]", "fourteen"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        await _coach.Send("form.sheet", ("readings[impact-spine-tilt]", "105"), ("as-read[impact-spine-tilt]", "yes"));

        // 105 from the ground is 15 (common practice, no source): one apart from 14, so the within-take deviation is 0.7.
        Assert.Contains("marking ± 0.7°", _coach.Page.QuerySelector("#impact-spine-tilt")!.TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Read twice", _coach.Page.QuerySelector("#head-drift")!.TextContent, StringComparison.Ordinal);
        await _coach.Open(again);
        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
    }

    [Fact]
    public async Task Our_own_scatter_waits_among_the_changes_of_the_rulebook()
    {
        for (var lesson = 0; lesson < 5; lesson++)
        {
            await _coach.StartsALesson();
            await _coach.Send("#sheet", ("readings[impact-spine-tilt]", "12 14 16"));
        }

        await _coach.Open("/how-sure");
        Assert.Contains("scatter 2°", _coach.Page.QuerySelector("#impact-spine-tilt")!.TextContent, StringComparison.Ordinal);
        Assert.Null(_coach.Page.QuerySelector("#head-drift form"));

        await _coach.Send("#impact-spine-tilt form");

        Assert.Equal("/rulebook/changes", _coach.Path);
        Assert.Contains("Spine tilt at impact", _coach.Page.Body!.TextContent, StringComparison.Ordinal);
        await _coach.Open("/how-sure");
        await _coach.Send("#impact-spine-tilt form", ("measure", "no-such-measure"));
        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
    }

    [Fact]
    public async Task The_desk_finds_no_way_there()
    {
        var desk = await _coach.LetsIn(_office, "desk");
        await desk.Open("/rulebook");

        Assert.Null(desk.Page.QuerySelector("a[href='/how-sure']"));
    }
}
