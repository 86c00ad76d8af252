using System.Net;
using AngleSharp.Dom;

namespace CoachOffice.Web.Tests.Plans;

public sealed class PrivatePlanTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _coach = null!;
    private Visitor _student = null!;
    private string _plan = "";
    private string _link = "";

    public async ValueTask InitializeAsync()
    {
        _coach = await _office.OpensThePractice();
        _plan = await _coach.Approves();
        _link = await _coach.HandsOutALink(_plan);
        _student = new Visitor(_office);
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task The_link_is_exchanged_for_a_limited_cookie_and_a_clean_address()
    {
        await _student.Open(_link);

        Assert.Equal("/my-plan", _student.Path);
        var cookie = Assert.Single(_student.Way[0].Headers.GetValues("Set-Cookie"), c => c.StartsWith("coachoffice-plan=", StringComparison.Ordinal));
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(_student.Page.QuerySelectorAll("script"));
        Assert.Equal("Ida's practice plan", _student.Heading);
        Assert.DoesNotContain("Sommerfeld", _student.Text, StringComparison.Ordinal);
        await _student.Open("/students");
        Assert.Equal("/sign-in", _student.Path);
    }

    [Theory]
    [InlineData("/p/AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("/p/short")]
    [InlineData("/my-plan")]
    [InlineData("/my-plan/practised")]
    [InlineData("/my-plan/numbers")]
    public async Task What_opens_nothing_says_so_kindly(string path)
    {
        await _student.Open(path);

        Assert.Equal(HttpStatusCode.NotFound, _student.Status);
        Assert.Equal("This link does not open anything now", _student.Heading);
        Assert.Null(_student.Page.QuerySelector("main a.button"));
    }

    [Fact]
    public async Task A_student_sees_their_own_numbers_in_plain_words_and_only_what_the_plan_works_on()
    {
        await _student.Open(_link);
        await _student.Open(_student.Page.QuerySelector("a[href='/my-plan/numbers']")!.GetAttribute("href")!);

        Assert.Contains("it was 13 cm", _student.Text, StringComparison.Ordinal);
        Assert.Contains("you are on the way", _student.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("marked", _student.Text, StringComparison.Ordinal);
        Assert.Empty(_student.Page.QuerySelectorAll("script"));
        await _student.Open(_student.Page.QuerySelector("img.my-chart")!.GetAttribute("src")!);
        Assert.Equal("image/svg+xml", _student.Answer.Content.Headers.ContentType!.MediaType);
        await _student.Open("/my-plan/numbers?handler=drawing&measure=club-path");
        Assert.Equal(HttpStatusCode.NotFound, _student.Status);
    }

    [Fact]
    public async Task A_closed_link_ends_its_cookie_too()
    {
        await _student.Open(_link);
        await _coach.Open(_plan);
        await _coach.Send("form[action*='do=links']");

        await _student.Open("/my-plan");

        Assert.Equal(HttpStatusCode.NotFound, _student.Status);
    }

    [Fact]
    public async Task A_check_in_posted_twice_is_one()
    {
        await _student.Open(_link);
        await _student.Open("/my-plan/practised");
        var id = _student.Page.QuerySelector("[name=Id]")!.GetAttribute("value");
        (string, string?)[] form = [("Id", id), ("Minutes", "20"), ("Share", "75"), ("Pain", "no")];
        await _student.Send("form.check-in", form);
        Assert.Equal("Noted, thank you", _student.Heading);
        await _student.Open("/my-plan/practised");

        await _student.Send("form.check-in", form);

        Assert.Equal("Noted, thank you", _student.Heading);
        await _student.Open("/my-plan");
        Assert.Single(_student.Page.QuerySelectorAll(".kept-days li"));
    }

    [Fact]
    public async Task Whether_it_hurt_must_be_said_and_what_was_typed_stays()
    {
        await _student.Open(_link);
        await _student.Open("/my-plan/practised");

        await _student.Send("form.check-in", ("Minutes", "a while"), ("Comment", "Windy."));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, _student.Status);
        Assert.Equal(2, _student.Page.QuerySelectorAll("[role=alert] li").Length);
        Assert.Equal("a while", _student.Page.QuerySelector("[name=Minutes]")!.GetAttribute("value"));
        Assert.Equal("Windy.", _student.Page.QuerySelector("[name=Comment]")!.TextContent);
    }

    [Fact]
    public async Task Pain_pauses_the_plan_and_tops_the_coachs_page()
    {
        await _student.Open(_link);
        await _student.Open("/my-plan/practised?pain=yes");

        await _student.Send("form.check-in", ("Pain", "yes"), ("Where", "lower-back"));

        Assert.Equal("Your plan is paused", _student.Heading);
        Assert.Contains("licensed professional", _student.Text, StringComparison.Ordinal);
        await _student.Open("/my-plan");
        Assert.Empty(_student.Page.QuerySelectorAll("a.practised"));
        await _coach.Open(_plan);
        Assert.Contains("Pain was reported", _coach.Page.QuerySelector(".alarm")!.TextContent, StringComparison.Ordinal);
        await _coach.Send(".alarm form");
        Assert.Null(_coach.Page.QuerySelector(".alarm"));
    }

    [Fact]
    public async Task A_sign_of_an_emergency_shows_the_number_and_nothing_else()
    {
        await _student.Open(_link);
        await _student.Open("/my-plan/practised");

        await _student.Send("form.check-in", ("Signs", "chest-pain"));

        Assert.Equal("Seek emergency care now", _student.Heading);
        Assert.Equal("tel:112", Assert.Single(_student.Page.QuerySelectorAll("main a")).GetAttribute("href"));
    }

    [Fact]
    public async Task The_printed_sheet_carries_the_link_as_a_drawing_that_changes_nothing_by_itself()
    {
        await _coach.Open($"{_plan}/print");
        Assert.Empty(_coach.Page.QuerySelectorAll(".sheet-qr"));

        await _coach.Send(".print-bar form");

        Assert.NotNull(_coach.Page.QuerySelector(".sheet-qr svg"));
        Assert.Null(_coach.Page.QuerySelector(".sheet-qr [style]"));
    }

    [Fact]
    public async Task One_students_link_opens_no_other_students_plan()
    {
        var other = await _coach.Approves();
        var link = await _coach.HandsOutALink(other);
        await _student.Open(_link);
        var mine = _student.Page.QuerySelector(".now")!.Id ?? _student.Page.QuerySelector(".now h2")!.Id;

        var second = new Visitor(_office);
        await second.Open(link);

        Assert.NotEqual(mine, second.Page.QuerySelector(".now h2")!.Id);
        await _student.Open(other);
        Assert.Equal("/sign-in", _student.Path);
    }
}
