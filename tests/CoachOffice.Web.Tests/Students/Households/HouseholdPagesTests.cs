using System.Net;

namespace CoachOffice.Web.Tests.Students.Households;

/// <summary>Households by hand, without a line of script.</summary>
public sealed class HouseholdPagesTests : IAsyncLifetime
{
    private readonly OfficeHost _office = new();
    private Visitor _owner = null!;

    public async ValueTask InitializeAsync() => _owner = await _office.OpensThePractice();

    public ValueTask DisposeAsync()
    {
        _office.Dispose();
        return ValueTask.CompletedTask;
    }

    [Fact]
    public async Task A_payer_is_named_shared_changed_and_left()
    {
        var ida = await _owner.Registers();
        var bo = await _owner.Registers("Bo", "Sommerfeld");
        await _owner.Open(ida);
        await _owner.Open(_owner.Page.QuerySelector("a[href$='/pays']")!.GetAttribute("href")!);
        await _owner.Send("form[action*='New']");
        var household = _owner.Path;
        Assert.Equal("Household of Ida Sommerfeld", _owner.Heading);

        await _owner.Open($"{bo}/pays");
        await _owner.Send("form[role=search]", ("Text", "ida"));
        await _owner.Send("form[action*='Share']");
        Assert.Equal(household, _owner.Path);
        Assert.Equal(["Bo Sommerfeld", "Ida Sommerfeld"], _owner.Page.QuerySelectorAll(".rows .what").Select(r => r.TextContent.Trim()));

        await _owner.Send("form[action*='Save']", ("Input.Name", "Herr <b>Sommerfeld</b>"), ("Input.PostalAddress", "1 Way\nTown"));
        Assert.Equal("Household of Herr <b>Sommerfeld</b>", _owner.Heading);
        await _owner.Send("form[action*='Save']", ("Input.Email", "nowhere"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, _owner.Status);
        Assert.Contains("'nowhere' is no mail address", _owner.Alert, StringComparison.Ordinal);

        await _owner.Open(bo);
        Assert.Contains("Herr <b>Sommerfeld</b> pays, in one household with Ida Sommerfeld", _owner.Text, StringComparison.Ordinal);
        await _owner.Open("/students/households");
        Assert.Contains("pays for Bo Sommerfeld, Ida Sommerfeld", _owner.Text, StringComparison.Ordinal);
        await _owner.Open($"/students?household={household.Split('/')[^1]}");
        Assert.Equal(2, _owner.Page.QuerySelectorAll("#results .what").Length);

        await _owner.Open(household);
        await _owner.Send("form[action*='Take']");
        Assert.Single(_owner.Page.QuerySelectorAll(".rows .what"));
    }

    [Fact]
    public async Task The_desk_may_a_stranger_may_not_and_an_unknown_one_is_not_found()
    {
        var ida = await _owner.Registers();
        var desk = await _owner.LetsIn(_office, "desk");
        await desk.Open($"{ida}/pays");
        Assert.Equal(HttpStatusCode.OK, desk.Status);
        await desk.Open("/students/households/00000000-0000-0000-0000-000000000001");
        Assert.Equal(HttpStatusCode.NotFound, desk.Status);

        var stranger = new Visitor(_office);
        foreach (var page in new[] { $"{ida}/pays", "/students/households", "/students/households/00000000-0000-0000-0000-000000000001" })
        {
            await stranger.Open(page);
            Assert.Equal("/sign-in", stranger.Path);
        }
    }
}
