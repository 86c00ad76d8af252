using System.Net;
using CoachOffice.Web.Shell.Security;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.Security;

public sealed class HeaderTests(OfficeHost office) : IClassFixture<OfficeHost>
{
    private static CancellationToken Ct => TestContext.Current.CancellationToken;

    private static string? One(HttpResponseMessage answer, string name) =>
        answer.Headers.TryGetValues(name, out var values) || answer.Content.Headers.TryGetValues(name, out values) ? string.Join(", ", values) : null;

    // Values: OWASP Secure Headers Project list.
    [Theory]
    [InlineData("/")]
    [InlineData("/sign-in")]
    [InlineData("/problem/404")]
    [InlineData("/health")]
    [InlineData("/css/base.css")]
    [InlineData("/no/such/page")]
    public async Task Every_answer_carries_the_headers_that_close_doors(string path)
    {
        var answer = await office.Stranger().GetAsync(new Uri(path, UriKind.Relative), Ct);

        Assert.Equal("nosniff", One(answer, "X-Content-Type-Options"));
        Assert.Equal("DENY", One(answer, "X-Frame-Options"));
        Assert.Equal("no-referrer", One(answer, "Referrer-Policy"));
        Assert.Equal("same-origin", One(answer, "Cross-Origin-Opener-Policy"));
        Assert.Equal("same-origin", One(answer, "Cross-Origin-Resource-Policy"));
        Assert.Contains("camera=()", One(answer, "Permissions-Policy"), StringComparison.Ordinal);
        Assert.Null(One(answer, "Server"));
        Assert.Null(One(answer, "Strict-Transport-Security"));
        var csp = One(answer, "Content-Security-Policy");
        foreach (var part in (string[])["default-src 'none'", "script-src 'self'", "style-src 'self'", "base-uri 'none'", "frame-ancestors 'none'", "form-action 'self'", "object-src 'none'"])
            Assert.Contains(part, csp, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", csp, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/sign-in")]
    [InlineData("/problem/404")]
    public async Task No_cache_keeps_a_page(string path) =>
        Assert.Contains("no-store", One(await office.Stranger().GetAsync(new Uri(path, UriKind.Relative), Ct), "Cache-Control"), StringComparison.Ordinal);

    [Fact]
    public async Task Over_https_the_browser_is_told_to_stay_there()
    {
        var client = office.Stranger();
        client.BaseAddress = new Uri("https://office.example");

        Assert.Equal("max-age=31536000; includeSubDomains", One(await client.GetAsync(new Uri("/health", UriKind.Relative), Ct), "Strict-Transport-Security"));
    }

    [Fact]
    public async Task A_browsers_report_is_counted()
    {
        var reports = office.Services.GetRequiredService<CspReports>();
        var before = reports.Count;

        var answer = await office.Stranger().PostAsync(new Uri(AnonymousPages.CspReport, UriKind.Relative), new StringContent("{\"csp-report\":{}}"), Ct);

        Assert.Equal(HttpStatusCode.NoContent, answer.StatusCode);
        Assert.Equal(before + 1, reports.Count);
    }
}
