using System.Net;
using AngleSharp.Dom;

namespace CoachOffice.Web.Tests.Plans;

public sealed class DraftPageTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private string _plan = "";

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        _plan = await _coach.Drafts();
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public void The_draft_tells_what_was_seen_what_drives_it_and_what_to_work_on()
    {
        Assert.StartsWith("Draft for", _coach.Heading, StringComparison.Ordinal);
        Assert.Equal(["What we saw", "What drives what", "Work on this"], _coach.Page.QuerySelectorAll("main h2").Select(h => h.TextContent).Take(2).Append(_coach.Page.QuerySelector("#work")!.TextContent));
        var cause = _coach.Page.QuerySelector(".cause")!;
        Assert.Contains("Head shift on the way down", cause.QuerySelector("summary")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("Spine tilt at impact", cause.QuerySelector(".effects")!.TextContent, StringComparison.Ordinal);
        Assert.True(_coach.Page.QuerySelectorAll(".rung").Length >= 4);
    }

    [Fact]
    public void Every_line_opens_to_its_reasons()
    {
        Assert.All(_coach.Page.QuerySelectorAll(".saw-line, .cause > details"), line => Assert.NotNull(line.QuerySelector(".why p")));
        Assert.Contains("body-outruns", _coach.Page.QuerySelector(".cause .why code")!.TextContent, StringComparison.Ordinal);
        var first = _coach.Page.QuerySelector(".card header .why")!.TextContent;
        Assert.Contains("reach counts", first, StringComparison.Ordinal);
        Assert.Contains("steps beyond the band", first, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_change_stands_beside_the_drafts_own()
    {
        await _coach.Opens("drill");
        await _coach.Send("form[action*='do=drill']", ("Sets", "2"), ("Reps", "9"), ("Reason", "does-not-suit-this-person"), ("Comment", "Tires quickly"));

        var departure = _coach.Page.QuerySelectorAll(".departure").Select(d => d.TextContent).ToList();
        Assert.Contains(departure, d => d.Contains("sets", StringComparison.Ordinal) && d.Contains("→ 2", StringComparison.Ordinal) && d.Contains("Tires quickly", StringComparison.Ordinal));
        Assert.Equal("2 × 9", _coach.Page.QuerySelector(".drill-count .numeral")!.TextContent);
    }

    [Fact]
    public async Task A_change_without_a_reason_is_refused_and_stays_in_its_form()
    {
        await _coach.Opens("drill");
        await _coach.Send("form[action*='do=drill']", ("Sets", "two"), ("Cue", "my own words"), ("Reason", ""));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Contains("Pick why you depart from the draft", _coach.Alert, StringComparison.Ordinal);
        Assert.Contains("'two' is none", _coach.Alert, StringComparison.Ordinal);
        Assert.Equal("my own words", _coach.Page.QuerySelector("details[open] [name=Cue]")!.GetAttribute("value"));
    }

    [Fact]
    public async Task A_drill_is_swapped_or_taken_out_with_one_button()
    {
        var name = _coach.Page.QuerySelector(".drill-name")!.TextContent;

        await _coach.Opens("drill");
        await _coach.SendTo($"{_plan}?do=swap", "form[action*='do=drill']", ("Reason", "not-feasible"));

        Assert.Equal("", _coach.Alert);
        Assert.NotEqual(name, _coach.Page.QuerySelector(".drill-name")!.TextContent);
        Assert.Contains(name, _coach.Page.QuerySelector(".departure s")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_form_is_one_tap_away_and_the_page_holds_none_unasked()
    {
        Assert.Empty(_coach.Page.QuerySelectorAll("form[action*='do=drill'], form[action*='do=order']"));
        var openers = _coach.Page.QuerySelectorAll("a.opener").Select(a => a.GetAttribute("href")!).ToList();
        Assert.Equal(_coach.Page.QuerySelectorAll(".drill").Length, openers.Count(o => o.Contains("open=drill-", StringComparison.Ordinal)));

        foreach (var opener in openers)
        {
            await _coach.Open(opener);

            Assert.Single(_coach.Page.QuerySelectorAll($"details[open][id='{opener.Split('#')[1]}'] form"));
            Assert.Equal(openers.Count - 1, _coach.Page.QuerySelectorAll("a.opener").Length);
        }
    }

    [Fact]
    public async Task A_refused_move_stays_open_with_what_was_typed()
    {
        await _coach.Opens("move");
        await _coach.Send("form[action*='do=order']", ("Way", "later"), ("Reason", ""), ("Comment", "Too early for this"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.Equal("Too early for this", _coach.Page.QuerySelector("details[open] [name=Comment]")!.GetAttribute("value"));
    }

    [Fact]
    public async Task Approving_twice_is_approving_once()
    {
        var version = _coach.Page.QuerySelector("form.approve [name=Version]")!.GetAttribute("value");
        await _coach.Send("form.approve");
        Assert.StartsWith("Plan of", _coach.Heading, StringComparison.Ordinal);

        await _coach.SendTo($"{_plan}?do=approve", "form[action*='do=links']", ("Version", version));

        Assert.Equal(_plan, _coach.Path);
        Assert.Single(_coach.Page.QuerySelectorAll("#mail ~ ul strong"), m => m.TextContent == "The plan");
        Assert.Single(_coach.Page.QuerySelectorAll("#history ~ ul strong"), m => m.TextContent == "Active");
    }

    [Fact]
    public async Task A_step_the_page_does_not_know_is_not_there()
    {
        await _coach.SendTo($"{_plan}?do=publish", "form.approve");

        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
    }

    [Fact]
    public async Task A_plan_is_paused_resumed_and_withdrawn_with_its_reasons()
    {
        await _coach.Send("form.approve");
        await _coach.Send("form[action*='do=pause']", ("Because", "On holiday"));
        Assert.Contains("Paused: On holiday", _coach.Page.QuerySelector(".next h2")!.TextContent, StringComparison.Ordinal);

        await _coach.Send("form[action*='do=resume']", ("Because", "Back home"));
        Assert.Contains("Active", _coach.Page.QuerySelector(".next h2")!.TextContent, StringComparison.Ordinal);

        await _coach.Send("form[action*='do=revoke']", ("Because", "Took up the piano"));
        Assert.Contains("Withdrawn", _coach.Page.QuerySelector(".next h2")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_plan_entered_in_error_closes_for_the_student_and_stays_readable()
    {
        await _coach.Send("form.approve");

        await _coach.Send("form[action*='do=error']", ("Because", "Meant for her sister"));

        Assert.Contains("error", _coach.Page.QuerySelector(".next h2")!.TextContent, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(_coach.Page.QuerySelectorAll("form[action*='do=error'], form[action*='do=revoke'], form[action*='do=pause']"));
        Assert.NotEmpty(_coach.Page.QuerySelectorAll(".drill-name"));
    }
}
