using System.Net;

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
}
