using System.Net;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Data;
using CoachOffice.UseCases.Access;
using Microsoft.AspNetCore.Mvc;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.Web.Tests.FollowUps;

public sealed class StopTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private string _stop = "";

    public async ValueTask InitializeAsync()
    {
        var coach = await _office.OpensThePractice();
        var plan = await coach.Approves();
        await using var scope = _office.Services.CreateAsyncScope();
        var token = await scope.ServiceProvider.GetRequiredService<PrivateLinks>().Mint(PlanId.From(Guid.Parse(plan.Split('/')[^1])), Duration.FromDays(30), LinkPurpose.StopMessages);
        await scope.ServiceProvider.GetRequiredService<OfficeDb>().SaveChangesAsync(TestContext.Current.CancellationToken);
        _stop = $"/stop/{token}";
    }

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task Looking_stops_nothing()
    {
        var student = new Visitor(_office);
        await student.Open(_stop);
        await student.Open(_stop);

        Assert.Equal("Stop: words between lessons?", student.Heading);
        Assert.Equal(4, student.Page.QuerySelectorAll("main button").Length);
    }

    // RFC 8058 section 3.1: a POST of List-Unsubscribe=One-Click with neither cookie nor any other proof.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_mail_program_stops_them_with_one_bare_post(bool parts)
    {
        using HttpContent content = parts ? new MultipartFormDataContent { { new StringContent("One-Click"), "List-Unsubscribe" } } : new FormUrlEncodedContent([new("List-Unsubscribe", "One-Click")]);
        if (!parts) Assert.Equal(26, content.Headers.ContentLength);

        var answer = await _office.Stranger().PostAsync(new Uri(_stop, UriKind.Relative), content, TestContext.Current.CancellationToken);

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var student = new Visitor(_office);
        await student.Open(_stop);
        Assert.Equal("Words between lessons: stopped", student.Heading);
    }

    [Fact]
    public async Task Each_purpose_is_stopped_apart_and_asked_for_again_and_the_page_says_what_still_comes()
    {
        var student = new Visitor(_office);
        await Post(_stop, "appointment");
        await student.Open(_stop);

        Assert.Equal("Stop: words between lessons?", student.Heading);
        Assert.Contains("Reminders of lessons: stopped", student.Text, StringComparison.Ordinal);
        Assert.Contains("still comes", student.Text, StringComparison.Ordinal);
        await Post($"{_stop}?handler=ask", "appointment");
        await student.Open(_stop);
        Assert.DoesNotContain("stopped", student.Text, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Post(_stop, "office")).StatusCode);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, (await Post($"{_stop}?handler=withdraw", null)).StatusCode);
    }

    private Task<HttpResponseMessage> Post(string address, string? what) =>
        _office.Stranger().PostAsync(new Uri(address, UriKind.Relative), new FormUrlEncodedContent(what is null ? [] : [new("what", what)]), TestContext.Current.CancellationToken);

    [Fact]
    public async Task An_unknown_link_is_a_kind_404()
    {
        var student = new Visitor(_office);

        await student.Open("/stop/AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA");

        Assert.Equal(HttpStatusCode.NotFound, student.Status);
        Assert.Equal("This link does not open anything now", student.Heading);
    }

    [Fact]
    public void Only_this_page_and_the_one_for_failures_take_posts_without_proof_of_origin()
    {
        var exempt = typeof(Program).Assembly.GetTypes().Where(t => t.IsDefined(typeof(IgnoreAntiforgeryTokenAttribute), inherit: true)).Select(t => t.FullName);

        Assert.Equal(["CoachOffice.Web.Features.FollowUps.StopModel", "CoachOffice.Web.Features.Problem.IndexModel"], exempt.Order(StringComparer.Ordinal));
    }
}
