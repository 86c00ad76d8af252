using System.Net;
using System.Text.RegularExpressions;
using CoachOffice.Web.Shell.Security;
using Microsoft.AspNetCore.Authorization;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.Security;

public sealed partial class RightsTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    /// <summary>Pages by who may open them; a new page of the shell must be put in one of these rows.</summary>
    private static readonly string[] OwnersOnly = ["/Settings/Index", "/Settings/History", "/Settings/Backups", "/Access/Accounts", "/Students/Erase"];

    [Fact]
    public void Pages_for_owners_are_those_listed()
    {
        var pages = Pages().Where(p => p.Metadata.GetOrderedMetadata<IAuthorizeData>().Any(a => a.Policy == OfficePolicies.Own)).Select(Name);

        Assert.Superset(OwnersOnly.ToHashSet(), pages.ToHashSet());
    }

    [Theory]
    [InlineData("coach")]
    [InlineData("desk")]
    public async Task Neither_coach_nor_desk_opens_what_is_the_owners(string policy)
    {
        var person = await _owner.LetsIn(_office, policy);
        foreach (var page in Pages().Where(p => p.Metadata.GetOrderedMetadata<IAuthorizeData>().Any(a => a.Policy == OfficePolicies.Own)))
        {
            await person.Open(Address(page));
            Assert.True(person.Status == HttpStatusCode.Forbidden, $"{policy} opened {Address(page)}: {person.Status}");
        }

        Assert.DoesNotContain(person.Page.QuerySelectorAll(".main-nav a"), a => a.TextContent == "Settings");
    }

    [Fact]
    public async Task The_desk_opens_nothing_that_is_for_teaching()
    {
        var desk = await _owner.LetsIn(_office, "desk");
        foreach (var page in Pages().Where(p => p.Metadata.GetOrderedMetadata<IAuthorizeData>().Any(a => a.Policy == OfficePolicies.Teach)))
        {
            await desk.Open(Address(page));
            Assert.True(desk.Status == HttpStatusCode.Forbidden, $"The desk opened {Address(page)}: {desk.Status}");
        }

        await desk.Open("/students");
        Assert.Equal(HttpStatusCode.OK, desk.Status);
    }

    private IEnumerable<RouteEndpoint> Pages() =>
        _office.Services.GetRequiredService<EndpointDataSource>().Endpoints.OfType<RouteEndpoint>().Where(e => e.Metadata.GetMetadata<PageActionDescriptor>() is not null);

    private static string Name(RouteEndpoint page) => page.Metadata.GetMetadata<PageActionDescriptor>()!.ViewEnginePath;

    private static string Address(RouteEndpoint page) => Parameter().Replace("/" + page.RoutePattern.RawText!.TrimStart('/'), "00000000-0000-0000-0000-000000000001");

    [GeneratedRegex(@"\{[^}]*\}", RegexOptions.None, 1000)]
    private static partial Regex Parameter();
}
