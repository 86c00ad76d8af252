namespace CoachOffice.Web.Tests.Lessons;

public sealed class LiveGradeTests : IAsyncLifetime
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
    public async Task Grades_come_while_one_types_and_nothing_is_saved()
    {
        await _coach.SendTo(_coach.Page.QuerySelector("#sheet")!.GetAttribute("data-grade")!, "#sheet", ("readings[downswing-head-shift]", "13 12 14"), ("readings[club-path]", "fast"));

        Assert.Contains("marked, high", _coach.Page.QuerySelector("[data-grade-of=downswing-head-shift]")!.TextContent, StringComparison.Ordinal);
        Assert.NotNull(_coach.Page.QuerySelector("[data-grade-of=club-path] .error"));
        Assert.Empty(_coach.Page.QuerySelectorAll("header"));
        await _coach.Open(_lesson);
        Assert.Empty(_coach.Page.QuerySelectorAll(".measure-grade svg"));
    }

    [Fact]
    public async Task A_measure_the_book_does_not_know_is_named()
    {
        await _coach.SendTo(_coach.Page.QuerySelector("#sheet")!.GetAttribute("data-grade")!, "#sheet", ("readings[impact-spin-tilt]", "13"));

        Assert.Contains("impact-spin-tilt", _coach.Page.Body!.TextContent, StringComparison.Ordinal);
    }
}
