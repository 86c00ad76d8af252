using System.Net;

namespace CoachOffice.Web.Tests.Rulebook.Editing;

/// <summary>The check of an entry's form by its own button, as a browser without script sends it.</summary>
public sealed class CheckTests : IAsyncLifetime
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
    public async Task It_shows_faults_and_what_the_change_brings_beside_their_fields_and_keeps_nothing()
    {
        await _coach.Open("/rulebook/edit/drill?for=downswing-head-shift.high");
        await _coach.Send("form#entry", [.. NewDrill, ("cue", ""), ("do", "check")]);
        Assert.Equal(HttpStatusCode.OK, _coach.Status);
        Assert.Contains("\"What to say\" is missing", At("cue"), StringComparison.Ordinal);

        await _coach.Send("form#entry", ("cue", "nose stays over the tee"), ("do", "check"));

        Assert.Empty(At("cue"));
        Assert.Contains("no ladder names it", At("trains"), StringComparison.Ordinal);
        await _coach.Open("/rulebook/changes");
        Assert.Contains("Nothing waits", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_condition_no_swing_can_meet_is_refused_at_the_conditions()
    {
        await _coach.Open("/rulebook/edit/pattern?for=tempo-ratio.low");
        await _coach.Send(
            "form#entry",
            ("name", "Never back"), ("precedence", "7"), ("when.joins", "and"), ("when.joins", "and"), ("when.what", "Tempo"), ("when.what", "Tempo"), ("when.is", "low"), ("when.is", "above"),
            ("when.strength", ""), ("when.strength", ""), ("when.number", ""), ("when.number", "3.5"), ("because", "It cannot be."), ("rationale", "Nothing is low and high at once."), ("do", "check"));

        Assert.Contains("never true", At("when"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_worked_case_that_comes_out_otherwise_leads_to_itself()
    {
        await _coach.Open("/rulebook/edit/range/impact-spine-tilt");
        await _coach.Send("form#entry", ("driver.low", "24"), ("driver.aim-low", "24"), ("do", "check"));

        var link = _coach.Page.QuerySelector("[data-faults-of=elsewhere] a")!;
        Assert.StartsWith("/rulebook/edit/case/setup-tilt", link.GetAttribute("href"), StringComparison.Ordinal);
        await _coach.Open(link.GetAttribute("href")!);
        Assert.Equal(HttpStatusCode.OK, _coach.Status);
    }

    private static (string, string?)[] NewDrill =>
    [
        ("name", "Nose over the tee"), ("stages", "rehearse"), ("rooms", "home"), ("club", "none"), ("steps", "Stand over a tee without a club and turn slowly."),
        ("done-when.hits", "8"), ("done-when.of", "10"), ("done-when.what", "turns with the nose over the tee"),
    ];

    private string At(string field) => _coach.Page.QuerySelector($"[data-faults-of='{field}']")!.TextContent.Trim();
}
