using CoachOffice.Web.Shell.Clock;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests.Watching;

/// <summary>A day of the office in which names, addresses and secrets pass through everything that could write them down.</summary>
internal sealed class ADay(OfficeHost office)
{
    /// <summary>What must stand nowhere outside: names, mail addresses, secrets of links, and the words of the day.</summary>
    public List<string> Private { get; } = ["Ida", "Sommerfeld", "example.org", Owner.Name, "Wetherby", Owner.Password, "1988-03-04"];

    public async Task Passes()
    {
        var stop = TestContext.Current.CancellationToken;
        var coach = await office.OpensThePractice();
        var plan = await coach.Approves();
        var link = await coach.HandsOutALink(plan);
        var token = link[(link.LastIndexOf('/') + 1)..];
        Assert.True(token.Length > 20);
        Private.Add(token);
        await coach.Open("/follow-ups");
        await coach.Send(".message form[action*='send']");
        await coach.Open("/students?q=Sommerfeld");
        await coach.Open("/students/Sommerfeld");
        var stranger = new Visitor(office);
        await stranger.Open($"/p/{token}");
        await stranger.Open($"/p/{token}x?mail=ida@example.org");
        await stranger.Open($"/stop/{token}");
        await stranger.Open("/sign-in");
        await stranger.Send("form", ("Input.Email", "ida@example.org"), ("Input.Password", Owner.Password + "x"));
        using var clock = new OfficeClock(office.Services.GetRequiredService<IServiceScopeFactory>());
        await clock.Sweep(stop);
        await clock.Backup(stop);
        await clock.Measure(stop);
    }
}
