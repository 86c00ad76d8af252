using System.Net;

namespace CoachOffice.Web.Tests.Regressions;

/// <summary>Requests no page of ours sends: pages were shown without what they show and failed, or said something untrue.</summary>
public sealed class RequestTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/rulebook")]
    [InlineData("/rulebook/drills")]
    [InlineData("/settings/history")]
    public async Task A_post_to_a_page_that_takes_none_is_refused_in_a_sentence(string path)
    {
        await _owner.Open("/students");

        await _owner.SendTo(path, "form[role=search]");

        Assert.Equal(HttpStatusCode.MethodNotAllowed, _owner.Status);
        Assert.Equal("Not that way", _owner.Heading);
    }

    [Theory]
    [InlineData("TRACE")]
    [InlineData("OPTIONS")]
    public async Task An_unusual_verb_is_refused_and_no_failure(string verb)
    {
        using var answer = await _office.Stranger().SendAsync(new HttpRequestMessage(new HttpMethod(verb), "/sign-in"), TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
    }

    [Theory]
    [InlineData("/students?page=2", "/students")]
    [InlineData("/students?page=2147483647", "/students")]
    [InlineData("/follow-ups?part=2147483647", "/follow-ups")]
    [InlineData("/settings/history?page=2147483647", "/settings/history")]
    public async Task Beyond_the_end_of_a_list_nobody_is_told_that_it_is_empty(string address, string path)
    {
        await _owner.Registers();

        await _owner.Open(address);

        Assert.Equal((HttpStatusCode.OK, path), (_owner.Status, _owner.Path));
        Assert.DoesNotContain("No students yet", _owner.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task There_is_no_lesson_form_for_a_student_who_is_not_there()
    {
        await _owner.Open("/students/11111111-1111-1111-1111-111111111111/lessons/new");

        Assert.Equal(HttpStatusCode.NotFound, _owner.Status);
    }

    [Fact]
    public async Task A_text_with_the_character_zero_is_refused_whichever_way_the_form_came()
    {
        var lesson = await _owner.StartsALesson();

        await _owner.SendParts(lesson, "#sheet", ("Observations", "nothing\0here"));

        Assert.Equal(HttpStatusCode.BadRequest, _owner.Status);
        Assert.Equal("A text that cannot be kept", _owner.Heading);
    }

    [Fact]
    public async Task A_student_who_knocks_too_often_is_not_sent_to_the_office()
    {
        using var slow = new OfficeHost();
        slow.Settings["Office:RateLimits:Links"] = "1";
        var student = new Visitor(slow);
        await student.Open("/stop/nothing");

        await student.Open("/stop/nothing");

        Assert.Equal(HttpStatusCode.TooManyRequests, student.Status);
        Assert.Empty(student.Page.QuerySelectorAll("main a[href='/']"));
    }
}
