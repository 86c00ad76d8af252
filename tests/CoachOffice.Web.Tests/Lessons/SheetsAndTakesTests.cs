using System.Net;
using System.Text.Json;

namespace CoachOffice.Web.Tests.Lessons;

public sealed class SheetsAndTakesTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private string _lesson = "";

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        _lesson = await _coach.StartsALesson();
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Another_sheet_comes_with_everything_as_typed_and_saves_nothing()
    {
        await _coach.SendTo($"{_lesson}?handler=sheet", "#sheet", ("readings[club-path]", "3"), ("Notes", "Windy."), ("SheetKey", "set-up"));

        Assert.Equal(HttpStatusCode.OK, _coach.Status);
        Assert.Equal(8, _coach.Page.QuerySelectorAll("input[data-reading]").Length);
        Assert.Equal("3", _coach.Page.QuerySelector("[name='readings[club-path]']")!.GetAttribute("value"));
        Assert.Equal("Windy.", _coach.Page.QuerySelector("#Notes")!.TextContent);
        await _coach.Open(_lesson);
        Assert.True(_coach.Page.QuerySelectorAll("input[data-reading]").Length > 30);
    }

    [Fact]
    public async Task A_lesson_can_be_looked_at_by_another_sheet()
    {
        await _coach.Open($"{_lesson}?sheet=set-up");

        Assert.Equal(7, _coach.Page.QuerySelectorAll("input[data-reading]").Length);
        Assert.Equal("set-up", _coach.Page.QuerySelector("#SheetKey option[selected]")!.GetAttribute("value"));
    }

    [Fact]
    public async Task The_office_says_what_to_read_next_and_puts_it_on_the_sheet()
    {
        await _coach.SendTo($"{_lesson}?handler=grade", "#sheet", ("readings[downswing-head-shift]", "13"));
        var next = _coach.Page.QuerySelector("[data-next] button")!;
        await _coach.Open(_lesson);

        await _coach.SendTo($"{_lesson}?handler=sheet", "#sheet", ("SheetKey", "set-up"), ("Also", next.GetAttribute("value")!));

        Assert.NotNull(_coach.Page.QuerySelector($"[name='readings[{next.GetAttribute("value")}]']"));
    }

    [Fact]
    public async Task A_swing_that_stands_apart_is_named_and_counts()
    {
        await _coach.Send("#sheet", ("readings[impact-spine-tilt]", "14 15 - 40"));

        var grade = _coach.Page.QuerySelector("#grade-impact-spine-tilt")!;
        Assert.Contains("swing 4 (40°) stands apart", grade.TextContent, StringComparison.Ordinal);
        Assert.Contains("of 3", grade.TextContent, StringComparison.Ordinal);
        Assert.Equal("14 15 - 40", _coach.Page.QuerySelector("[name='readings[impact-spine-tilt]']")!.GetAttribute("value"));
    }

    [Fact]
    public async Task A_take_opens_from_the_lesson_and_keeps_its_frame_rate()
    {
        await _coach.Send("#sheet", ("readings[impact-spine-tilt]", "14 15"));
        var take = _coach.Page.QuerySelector("#takes a")!.GetAttribute("href")!;
        await _coach.Open(take);
        Assert.Contains("Spine tilt at impact", _coach.Page.QuerySelector("table")!.TextContent, StringComparison.Ordinal);

        await _coach.Send("main form", ("FrameRate", "3"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        await _coach.Send("main form", ("FrameRate", "60"));

        Assert.Equal("60", _coach.Page.QuerySelector("#FrameRate")!.GetAttribute("value"));
        await _coach.Open(_lesson);
        Assert.Contains("borderline", _coach.Page.QuerySelector("#grade-impact-spine-tilt")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_coach_keeps_sheets_of_their_own()
    {
        await _coach.Open("/sheets");
        Assert.Equal(3, _coach.Page.QuerySelectorAll(".rows > li").Length);
        await _coach.Send("#form form", ("Name", "Wedges"), ("Measures", "low-point"));
        Assert.Contains("'Wedges' is kept", _coach.Page.QuerySelector(".notice")!.TextContent, StringComparison.Ordinal);
        await _coach.Open(_coach.Page.QuerySelectorAll(".rows a")[^1].GetAttribute("href")!.Split('#')[0]);
        Assert.NotNull(_coach.Page.QuerySelector("input[value=low-point][checked]"));

        await _coach.Send("#form form", ("Name", ""));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        await _coach.Open("/sheets");
        await _coach.Send(".rows form");
        Assert.Equal(3, _coach.Page.QuerySelectorAll(".rows > li").Length);
    }

    [Fact]
    public async Task A_device_that_was_away_asks_who_is_signed_in_before_it_sends()
    {
        await _coach.Open(_lesson);
        var account = _coach.Page.QuerySelector("#sheet")!.GetAttribute("data-account");

        await _coach.Open(_coach.Page.QuerySelector("#sheet")!.GetAttribute("data-state")!);

        var state = JsonDocument.Parse(_coach.Page.Body!.TextContent).RootElement;
        Assert.Equal((1, account), (state.GetProperty("version").GetInt32(), state.GetProperty("account").GetString()));
        Assert.NotEmpty(state.GetProperty("proof").GetString()!);
        var stranger = await _office.Stranger().GetAsync(new Uri($"{_lesson}?handler=state", UriKind.Relative), TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, stranger.StatusCode);
    }
}
