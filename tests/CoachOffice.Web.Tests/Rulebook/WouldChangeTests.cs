namespace CoachOffice.Web.Tests.Rulebook;

public sealed class WouldChangeTests : IAsyncLifetime
{
    private const string Address = "/rulebook/changes/what-would-change";
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;

    public async ValueTask InitializeAsync() => _coach = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Nothing_gathered_is_nothing_to_compare()
    {
        await _coach.Open(Address);
        await _coach.Send("main form");

        Assert.Contains("nothing to compare", _coach.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_practice_without_lessons_is_told_so()
    {
        await _coach.AimsTheTempo("3.2");
        await _coach.Open(Address);
        await _coach.Send("main form");
        while (_coach.Answer.Headers.Contains("Refresh")) await _coach.Open(Address);

        Assert.Equal("No lesson is kept yet, so there is nothing to compare", _coach.Page.QuerySelector("#state")!.TextContent);
    }

    [Fact]
    public async Task A_draft_that_would_differ_is_shown_old_beside_new_without_a_line_of_script()
    {
        await _coach.Drafts();
        await _coach.ShortensALadder("quiet-head-down");
        await _coach.Open(Address);

        await _coach.Send("main form");
        Assert.Equal(Address, _coach.Path);
        while (_coach.Answer.Headers.Contains("Refresh"))
        {
            Assert.NotNull(_coach.Page.QuerySelector("progress"));
            Assert.NotNull(_coach.Page.QuerySelector("form[action*='Stop']"));
            await _coach.Open(Address);
        }

        Assert.Contains("One draft would differ", _coach.Text, StringComparison.Ordinal);
        Assert.Contains(Teaching.Student, _coach.Page.QuerySelector("article.would")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["in force", "with your changes"], _coach.Page.QuerySelectorAll(".beside")[0].QuerySelectorAll("p.quiet").Select(p => p.TextContent));
    }

    [Fact]
    public async Task It_is_stopped_by_a_button_and_seen_by_nobody_else()
    {
        var other = await _coach.LetsIn(_office, "coach");
        await _coach.AimsTheTempo("3.2");
        await _coach.Open(Address);
        await _coach.Send("main form");

        await _coach.SendTo($"{Address}?handler=Stop", "main form");
        await other.Open(Address);

        Assert.Equal(Address, _coach.Path);
        Assert.Empty(_coach.Alert);
        Assert.Null(other.Page.QuerySelector("#state"));
    }
}
