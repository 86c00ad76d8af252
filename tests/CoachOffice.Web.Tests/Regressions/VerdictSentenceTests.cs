namespace CoachOffice.Web.Tests.Regressions;

/// <summary>The verdict's page said that a stage goes on when its gate had just opened.</summary>
public sealed class VerdictSentenceTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private string _plan = "";
    private string _retest = "";

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        _plan = await _coach.Approves();
        _retest = _coach.Page.QuerySelector("a[href^='/retests/']")!.GetAttribute("href")!;
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_gate_that_counts_opens_with_the_number_and_the_page_says_so()
    {
        await Judge("4 3 5 4 4");

        Assert.Contains("The gate is open: Half swings has begun.", _coach.Text, StringComparison.Ordinal);
        Assert.Contains("The number is read again on", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_number_on_its_way_says_what_opens_the_gate()
    {
        await Judge("7 7 7 7 7");

        Assert.Contains("On its way. The stage goes on", _coach.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("The gate is open", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_paused_plan_says_that_the_stage_waits()
    {
        await Judge("7 7 7 7 7");
        await _coach.Open(_plan);
        await _coach.Send("form[action$='do=pause']", ("Because", "on holiday"));
        Assert.DoesNotContain("We look again on", _coach.Page.QuerySelector(".next")!.TextContent, StringComparison.Ordinal);

        await _coach.Open(_retest);

        Assert.Contains("The plan is paused", _coach.Page.QuerySelector(".verdict")!.TextContent, StringComparison.Ordinal);
    }

    private async Task Judge(string readings)
    {
        await _coach.Open(_retest);
        await _coach.Send("#sheet", ("readings[downswing-head-shift]", readings));
        Assert.Equal("", _coach.Alert);
    }
}
