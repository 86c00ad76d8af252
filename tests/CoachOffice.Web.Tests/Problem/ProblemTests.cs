using System.Net;
using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.Problem;

public sealed class ProblemTests(OfficeHost office) : IClassFixture<OfficeHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    [Theory]
    [InlineData(400, "could not be read")]
    [InlineData(403, "Not open to your role")]
    [InlineData(404, "Nothing here")]
    [InlineData(413, "Too much at once")]
    [InlineData(429, "Too many tries")]
    [InlineData(500, "Something failed on our side")]
    public async Task Each_refusal_of_a_request_has_a_sentence(int status, string words)
    {
        var answer = await office.Stranger().GetAsync(new Uri($"/problem/{status}", UriKind.Relative), Ct);

        Assert.Equal((HttpStatusCode)status, answer.StatusCode);
        Assert.Contains(words, await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_failure_is_a_sentence_and_a_reference_and_shows_nothing_of_the_inside()
    {
        using var broken = new OfficeHost();
        var owner = await broken.OpensThePractice();
        await using var scope = broken.Services.CreateAsyncScope();
        await scope.ServiceProvider.GetRequiredService<OfficeDb>().Database.ExecuteSqlRawAsync("ALTER TABLE Students RENAME TO Gone", Ct);

        await owner.Open("/students");

        Assert.Equal(HttpStatusCode.InternalServerError, owner.Status);
        Assert.Equal("Something failed on our side", owner.Heading);
        Assert.NotEqual("", owner.Page.QuerySelector("main code")!.TextContent);
        Assert.DoesNotContain("Sqlite", owner.Page.DocumentElement.OuterHtml, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("   at ", owner.Page.DocumentElement.OuterHtml, StringComparison.Ordinal);
    }

    [Fact]
    public async Task More_than_two_megabytes_are_refused_with_a_sentence()
    {
        using var real = new OfficeHost();
        real.UseKestrel(0);
        real.StartServer();
        using var client = new HttpClient { BaseAddress = real.ClientOptions.BaseAddress };

        var answer = await client.PostAsync(new Uri("/sign-in", UriKind.Relative), new FormUrlEncodedContent([new("Input.Email", new string('x', 3 * 1024 * 1024))]), Ct);

        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.Contains("Too much at once", await answer.Content.ReadAsStringAsync(Ct), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Search_engines_are_asked_to_stay_away() =>
        Assert.Contains("Disallow: /", await office.Stranger().GetStringAsync(new Uri("/robots.txt", UriKind.Relative), Ct), StringComparison.Ordinal);
}
