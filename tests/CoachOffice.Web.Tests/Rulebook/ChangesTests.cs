using System.Net;

namespace CoachOffice.Web.Tests.Rulebook;

public sealed class ChangesTests : IAsyncLifetime
{
    private const string Address = "/rulebook/changes";
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;

    public async ValueTask InitializeAsync() => _coach = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_change_is_said_in_words_first_and_its_lines_behind()
    {
        await _coach.AimsTheTempo("3.2");

        Assert.Equal("Driver: aim now 2.8 to 3.2, nothing before", _coach.Page.QuerySelector(".in-words li")!.TextContent);
        Assert.False(_coach.Page.QuerySelector("details.difference")!.HasAttribute("open"));
        Assert.Contains("the history leads back to edition 1", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Put_in_force_twice_is_one_edition()
    {
        await _coach.AimsTheTempo("3.2");
        await _coach.Send("form.put", ("Why", "Steadier"));
        var first = _coach.Path;
        await _coach.SendTo($"{Address}?handler=Put", "form[method=post]", ("Why", "Steadier"));

        Assert.Equal("/rulebook/history/2", first);
        Assert.Contains("No change of yours waits", _coach.Alert, StringComparison.Ordinal);
        await _coach.Open("/rulebook/history");
        Assert.Equal(2, _coach.Page.QuerySelectorAll("ol.editions > li").Length);
    }

    [Fact]
    public async Task The_second_editor_is_refused_with_both_names_and_goes_on_from_the_new_edition()
    {
        var other = await _coach.LetsIn(_office, "coach");
        await other.AimsTheTempo("3.3");
        await _coach.AimsTheTempo("3.2");
        await _coach.Send("form.put", ("Why", "Steadier"));

        await other.Send("form.put", ("Why", "Wider"));

        Assert.Equal(HttpStatusCode.Conflict, other.Status);
        Assert.Contains(Owner.Name, other.Alert, StringComparison.Ordinal);
        Assert.Contains("Person at the coach", other.Alert, StringComparison.Ordinal);
        Assert.Contains("changed by someone else too", other.Text, StringComparison.Ordinal);
        await other.Send("form[action*='Base']");
        await other.Send("form.put", ("Why", "Wider after all"));
        Assert.Equal("/rulebook/history/3", other.Path);
    }

    [Fact]
    public async Task What_was_dropped_is_taken_back()
    {
        await _coach.AimsTheTempo("3.2");
        await _coach.Send("form.inline");
        Assert.Contains("Nothing waits", _coach.Text, StringComparison.Ordinal);

        await _coach.Send("form[action*='Takeback']");

        Assert.Single(_coach.Page.QuerySelectorAll(".change-list > li"));
    }

    [Fact]
    public async Task What_a_change_brings_is_told_apart_from_what_was_there_before()
    {
        await Keeps("Chin over the coin");
        await _coach.Send("form.put", ("Why", "No ladder names it yet"));

        await Keeps("Nose over the tee");

        var parts = _coach.Page.QuerySelectorAll("details.warning, details.before").ToList();

        Assert.Contains("Nose over the tee", parts[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("no ladder names it", parts[0].TextContent, StringComparison.Ordinal);
        Assert.True(parts[0].HasAttribute("open"));
        Assert.StartsWith("Was there before", parts[1].TextContent.Trim(), StringComparison.Ordinal);
        Assert.Contains("Chin over the coin", parts[1].TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("Nose over the tee", parts[1].TextContent, StringComparison.Ordinal);
    }

    private async Task Keeps(string drill)
    {
        await _coach.Open("/rulebook/edit/drill");
        await _coach.Send("form#entry", [("name", drill), .. NewDrill, ("do", "keep")]);
    }

    private static (string, string?)[] NewDrill =>
    [
        ("trains", "Head shift on the way down, high"), ("stages", "rehearse"), ("rooms", "home"), ("club", "none"), ("steps", "Stand over a tee without a club and turn slowly."),
        ("cue", "nose stays over the tee"), ("done-when.hits", "8"), ("done-when.of", "10"), ("done-when.what", "turns with the nose over the tee"),
    ];
}
