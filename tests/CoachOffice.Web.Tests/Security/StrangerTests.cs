using System.Net;
using System.Text.RegularExpressions;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.StaticAssets;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.Security;

public sealed partial class StrangerTests(OfficeHost office) : IClassFixture<OfficeHost>
{
    private IEnumerable<RouteEndpoint> Routes => office.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>()
        .Where(e => e.Metadata.GetMetadata<StaticAssetDescriptor>() is null);

    private static bool IsOpen(Endpoint endpoint) => endpoint.Metadata.GetMetadata<IAllowAnonymous>() is not null;

    private static string Name(RouteEndpoint route) =>
        route.Metadata.GetMetadata<PageActionDescriptor>()?.ViewEnginePath ?? "/" + route.RoutePattern.RawText!.TrimStart('/');

    [Fact]
    public void What_a_stranger_may_open_is_the_list_and_nothing_else()
    {
        string[] listed = [.. AnonymousPages.Pages, .. AnonymousPages.Routes];

        Assert.Equal(listed.Order(), Routes.Where(IsOpen).Select(Name).Distinct().Order());
    }

    [Fact]
    public async Task Every_other_page_sends_a_stranger_to_the_sign_in()
    {
        var client = office.Stranger();
        foreach (var route in Routes.Where(r => !IsOpen(r)))
        {
            var path = Parameter().Replace("/" + route.RoutePattern.RawText!.TrimStart('/'), "00000000-0000-0000-0000-000000000001");
            var answer = await client.GetAsync(new Uri(path, UriKind.Relative), TestContext.Current.CancellationToken);

            Assert.True(answer.StatusCode is HttpStatusCode.Found or HttpStatusCode.NotFound, $"{path} answered {answer.StatusCode}.");
            if (answer.StatusCode is HttpStatusCode.Found) Assert.Equal(OfficeCookies.SignInPath, answer.Headers.Location!.AbsolutePath);
        }
    }

    [GeneratedRegex(@"\{[^}]*\}", RegexOptions.None, 1000)]
    private static partial Regex Parameter();
}
