using System.Net;

namespace CoachOffice.Web.Tests.Rulebook;

public sealed class RulebookTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _desk = null!;

    public async ValueTask InitializeAsync() => _desk = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task The_book_says_its_name_its_hash_and_leads_to_every_fault()
    {
        await _desk.Open("/rulebook");
        Assert.Matches("[0-9a-f]{64}", _desk.Text);
        var faults = _desk.Page.QuerySelectorAll(".sides a").Select(a => a.GetAttribute("href")!).ToList();
        Assert.True(faults.Count > 60);

        foreach (var fault in faults)
        {
            await _desk.Open(fault);
            Assert.True(_desk.Status == HttpStatusCode.OK, fault);
            Assert.Single(_desk.Page.QuerySelectorAll("h1"));
        }
    }

    [Fact]
    public async Task Patterns_read_as_sentences_and_lead_to_their_faults()
    {
        await _desk.Open("/rulebook/patterns");

        var pattern = _desk.Page.QuerySelector("#body-outruns")!;
        Assert.Contains("head shift on the way down is high", pattern.TextContent, StringComparison.Ordinal);
        Assert.NotNull(pattern.QuerySelector("a[href='/rulebook/faults/downswing-head-shift.high']"));
        Assert.Contains("provisional", pattern.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ranges_without_a_source_are_marked_provisional()
    {
        await _desk.Open("/rulebook/ranges");

        Assert.Contains("provisional", _desk.Page.QuerySelector("table.ranges")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/rulebook/drills")]
    [InlineData("/rulebook/cautions")]
    [InlineData("/rulebook/faults/impact-spine-tilt.low")]
    public async Task The_other_pages_open(string path)
    {
        await _desk.Open(path);

        Assert.Equal(HttpStatusCode.OK, _desk.Status);
    }

    [Theory]
    [InlineData("/rulebook/faults/no-such-thing.low")]
    [InlineData("/rulebook/faults/impact-spine-tilt.sideways")]
    [InlineData("/rulebook?book=0000")]
    public async Task What_the_book_does_not_hold_is_not_there(string path)
    {
        await _desk.Open(path);

        Assert.Equal(HttpStatusCode.NotFound, _desk.Status);
    }
}
