using System.Net;

namespace CoachOffice.Web.Tests.Students;

public sealed class ChartsTests : IAsyncLifetime
{
    private const string HeadShift = "downswing-head-shift";

    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private string _student = "";

    private string Chart => $"{_student}/measures/{HeadShift}/driver";

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        await _coach.Approves();
        var retest = _coach.Page.QuerySelector("a[href^='/retests/']")!.GetAttribute("href")!;
        await _coach.Open(retest);
        await _coach.Send("#sheet", ("readings[downswing-head-shift]", "4 3 5 4 4"));
        await _coach.Open("/students");
        _student = _coach.Page.QuerySelector("main a[href^='/students/0']")!.GetAttribute("href")!;
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task The_students_page_leads_to_all_measures_with_those_worked_on_first()
    {
        await _coach.Open(_student);
        await _coach.Open(_coach.Page.QuerySelector("a[href$='/measures']")!.GetAttribute("href")!);

        Assert.Equal(["Worked on", "All others"], _coach.Page.QuerySelectorAll("main h2").Select(h => h.TextContent));
        var first = _coach.Page.QuerySelector(".charts li")!;
        Assert.Equal(Chart, first.QuerySelector("a")!.GetAttribute("href"));
        Assert.StartsWith("Head shift on the way down, driver: 13 cm on 4 May 2026, 4 cm on ", first.QuerySelector("img")!.GetAttribute("alt"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_measure_has_its_figures_as_a_table_with_error_and_verdict()
    {
        await _coach.Open(Chart);

        var rows = _coach.Page.QuerySelectorAll("tbody tr");
        Assert.Equal(2, rows.Length);
        Assert.Contains("re-test", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("4 cm ± ", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("moved toward the wanted range", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("A trend is looked for once there are 5 days", _coach.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_drawing_is_an_image_that_is_not_sent_twice()
    {
        await _coach.Open($"{Chart}?handler=drawing");
        Assert.Equal("image/svg+xml", _coach.Answer.Content.Headers.ContentType!.MediaType);
        Assert.Equal((true, true, false), (_coach.Answer.Headers.CacheControl!.Private, _coach.Answer.Headers.CacheControl.NoCache, _coach.Answer.Headers.CacheControl.NoStore));
        Assert.StartsWith("<?xml", await _coach.Answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        var tag = _coach.Answer.Headers.ETag!;

        await _coach.Open($"{Chart}?handler=drawing", tag);
        Assert.Equal(HttpStatusCode.NotModified, _coach.Status);

        await _coach.Open($"{Chart}?handler=drawing&small=true", tag);
        Assert.Equal(HttpStatusCode.OK, _coach.Status);
    }

    [Fact]
    public async Task A_drawing_is_made_anew_when_a_lesson_changes()
    {
        await _coach.Open($"{Chart}?handler=drawing");
        var tag = _coach.Answer.Headers.ETag!;
        await _coach.Open(Chart);
        await _coach.Open(_coach.Page.QuerySelectorAll("tbody a")[^1].GetAttribute("href")!);
        await _coach.Send("#sheet", ("readings[downswing-head-shift]", "14"));

        await _coach.Open($"{Chart}?handler=drawing", tag);

        Assert.Equal(HttpStatusCode.OK, _coach.Status);
        Assert.NotEqual(tag, _coach.Answer.Headers.ETag);
    }

    [Fact]
    public async Task Two_lessons_stand_side_by_side_and_a_change_is_told_from_reading_error()
    {
        await _coach.Open(_student);
        await _coach.Open(_coach.Page.QuerySelector("a[href$='/side-by-side']")!.GetAttribute("href")!);

        var row = _coach.Page.QuerySelectorAll("tbody tr").Single(r => r.TextContent.Contains("Head shift on the way down", StringComparison.Ordinal));
        Assert.Contains("13 cm ± ", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("−9 cm", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("more than reading error", row.TextContent, StringComparison.Ordinal);
        Assert.Contains(_coach.Page.QuerySelectorAll("tbody tr"), r => r.TextContent.Contains("not read", StringComparison.Ordinal));
        await _coach.Open($"{_student}/lessons/side-by-side?earlier=00000000-0000-0000-0000-000000000007");
        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
    }

    [Fact]
    public async Task With_one_lesson_there_is_nothing_to_hold_it_against()
    {
        var other = await _coach.Registers();

        await _coach.Open($"{other}/lessons/side-by-side");

        Assert.Contains("there is none yet", _coach.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/measures/no-such-measure/driver")]
    [InlineData("/measures/downswing-head-shift/wedge")]
    [InlineData("/measures/downswing-head-shift/spoon")]
    public async Task What_was_never_measured_is_not_there(string path)
    {
        await _coach.Open(_student + path);
        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
        await _coach.Open(_student + path + "?handler=drawing");
        Assert.Equal(HttpStatusCode.NotFound, _coach.Status);
    }
}
