using System.Net;
using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.Access;

public sealed class FirstRunTests : IDisposable
{
    private readonly OfficeHost _office = new();

    public void Dispose() => _office.Dispose();

    [Fact]
    public async Task A_fresh_machine_leads_to_the_first_run_and_from_there_into_the_office()
    {
        var owner = new Visitor(_office);
        await owner.Open("/");
        Assert.Equal("/first-run", owner.Path);

        await owner.Send("form", Owner.FirstRun());
        Assert.Equal("Second step at sign-in", owner.Heading);

        await owner.Open("/");
        Assert.Equal("Today", owner.Heading);
        Assert.Contains(Owner.Name, owner.Page.QuerySelector(".account-name")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_wrong_is_said_beside_its_field_and_what_was_typed_stays()
    {
        var owner = new Visitor(_office);
        await owner.Open("/first-run");

        await owner.Send("form", ("Input.OwnerName", "Marianne"), ("Input.Email", "marianne"), ("Input.Password", "passwordpassword"), ("Input.PracticeName", ""), ("Input.Zone", "Europe/Lundon"), ("Input.Currency", "pounds"));

        Assert.Equal(HttpStatusCode.UnprocessableEntity, owner.Status);
        Assert.Contains("'Europe/Lundon' is no time zone", owner.Alert, StringComparison.Ordinal);
        Assert.Contains("three capital letters", owner.Alert, StringComparison.Ordinal);
        Assert.Equal("Europe/Lundon", owner.Page.QuerySelector("#Input_Zone")!.GetAttribute("value"));
        Assert.Equal("true", owner.Page.QuerySelector("#Input_PracticeName")!.GetAttribute("aria-invalid"));
        Assert.False(owner.Page.QuerySelector("#Input_Password")!.HasAttribute("value"));
    }

    [Theory]
    [InlineData("too short")]
    [InlineData("passwordpassword")]
    [InlineData("marianne marianne")]
    public async Task A_password_others_would_try_first_is_refused(string password)
    {
        var owner = new Visitor(_office);
        await owner.Open("/first-run");

        await owner.Send("form", [.. Owner.FirstRun().Where(f => f.Name != "Input.Password"), ("Input.Password", password)]);

        Assert.Equal("/first-run", owner.Path);
        Assert.Contains("assword", owner.Alert, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Two_people_at_once_make_one_owner()
    {
        var (one, other) = (new Visitor(_office), new Visitor(_office));
        await one.Open("/first-run");
        await other.Open("/first-run");

        await Task.WhenAll(
            one.Send("form", Owner.FirstRun()),
            other.Send("form", [.. Owner.FirstRun().Where(f => f.Name != "Input.Email"), ("Input.Email", "someone.else@example.org")]));

        await using var scope = _office.Services.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<OfficeDb>();
        Assert.Equal(1, await db.Users.CountAsync(TestContext.Current.CancellationToken));
        Assert.Equal(1, await db.Practices.CountAsync(TestContext.Current.CancellationToken));
        Assert.Single(new[] { one, other }, v => v.Path == "/account/second-factor");
    }

    [Fact]
    public async Task The_demo_practice_opens_while_the_browser_looks_on()
    {
        var owner = new Visitor(_office);
        await owner.Open("/first-run");

        await owner.Send("form", [.. Owner.FirstRun(), ("Input.Start", "demo")]);
        for (var looks = 0; owner.Path == "/first-run/demo" && looks < 600; looks++)
        {
            Assert.Equal("2", Assert.Single(owner.Answer.Headers.GetValues("Refresh")));
            await Task.Delay(200, TestContext.Current.CancellationToken);
            await owner.Open("/first-run/demo");
        }

        Assert.Contains("The demo practice is ready", owner.Text, StringComparison.Ordinal);
        Assert.Equal("/", (await _office.SignsIn()).Path);
    }

    [Fact]
    public async Task A_demo_with_a_poor_password_is_refused_on_its_form()
    {
        var owner = new Visitor(_office);
        await owner.Open("/first-run");

        await owner.Send("form", [.. Owner.FirstRun().Where(f => f.Name != "Input.Password"), ("Input.Password", "short"), ("Input.Start", "demo")]);

        Assert.Equal("/first-run", owner.Path);
        Assert.Contains("at least 15 characters", owner.Alert, StringComparison.Ordinal);
        Assert.True(owner.Page.QuerySelector("input[value=demo]")!.HasAttribute("checked"));
    }

    [Fact]
    public async Task Once_open_the_first_run_is_gone()
    {
        await _office.OpensThePractice();
        var stranger = new Visitor(_office);

        await stranger.Open("/first-run");

        Assert.Equal("/sign-in", stranger.Path);
    }
}
