using System.Net;

namespace CoachOffice.Web.Tests.Measuring;

public sealed class RetestPageTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private string _retest = "";

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        await _coach.Approves();
        _retest = _coach.Page.QuerySelector("a[href^='/retests/']")!.GetAttribute("href")!;
        await _coach.Open(_retest);
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public void The_page_says_how_it_was_taken_then()
    {
        Assert.StartsWith("Look again", _coach.Heading, StringComparison.Ordinal);
        Assert.Contains("13 cm", _coach.Page.QuerySelector(".before")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("240 frames a second", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Readings_become_a_verdict_in_words_with_its_smallest_real_change()
    {
        await _coach.Send("#sheet", ("readings[downswing-head-shift]", "4 3 5 4 4"));

        Assert.Equal(_retest, _coach.Path);
        var verdict = _coach.Page.QuerySelector(".verdict")!.TextContent;
        Assert.Contains("Moved toward", verdict, StringComparison.Ordinal);
        Assert.Contains("and in range", verdict, StringComparison.Ordinal);
        Assert.Contains("Smallest real change", verdict, StringComparison.Ordinal);
        Assert.NotNull(_coach.Page.QuerySelector(".change-drawing[role=img]"));
    }

    [Fact]
    public async Task The_lessons_own_day_is_refused_and_the_readings_stay()
    {
        await _coach.Send("#sheet", ("HeldOn", "2026-05-04"), ("readings[downswing-head-shift]", "4 3"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _coach.Status);
        Assert.NotEmpty(_coach.Alert);
        Assert.Equal("4 3", _coach.Page.QuerySelector("[name='readings[downswing-head-shift]']")!.GetAttribute("value"));
    }

    [Fact]
    public async Task A_retest_that_is_not_there_is_not_there()
    {
        await _coach.Open("/retests/00000000-0000-0000-0000-000000000009");

        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
    }
}
