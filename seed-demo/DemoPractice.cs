using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.SeedDemo.Making;
using CoachOffice.SeedDemo.Year;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Rulebook;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.SeedDemo;

/// <summary>
/// Opens the demo practice: an invented academy with a year behind it. The year runs through the same operations as a real one, on a file of its own with a clock of its own;
/// only the finished year is brought over, in one transaction. A crash leaves nothing behind, and the first run starts afresh.
/// </summary>
public static class DemoPractice
{
    private const int DaysOpenBefore = 372;
    private static readonly LocalTime Opening = new(7, 30);

    /// <summary>The owner's account, or why not. The same at every run, seen from its opening day.</summary>
    /// <param name="services">Of the office that shall hold it, with its database prepared.</param>
    /// <param name="form">The owner, and the practice as they want it called.</param>
    /// <param name="progress">Told after each day of the year.</param>
    /// <param name="stop">Gives up; nothing is left behind.</param>
    public static async Task<Outcome<AccountId>> Open(IServiceProvider services, FirstRunForm form, IProgress<SeedProgress>? progress, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(services);
        ArgumentNullException.ThrowIfNull(form);
        var wrong = form.Practice.Check();
        if (wrong.Count > 0) return Outcome<AccountId>.Refused(wrong);
        await using var scope = services.CreateAsyncScope();
        var live = scope.ServiceProvider.GetRequiredService<OfficeDb>();
        if (await live.Practices.AnyAsync(stop)) return OpenPractice.WasOpened();
        var folder = Directory.CreateTempSubdirectory("coachoffice-demo-");
        try
        {
            return await Make(new Order(scope.ServiceProvider, form with { IsDemo = true }, progress), folder.FullName, stop);
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static async Task<Outcome<AccountId>> Make(Order order, string folder, CancellationToken stop)
    {
        var live = order.Services.GetRequiredService<OfficeDb>();
        var now = order.Services.GetRequiredService<IClock>().GetCurrentInstant();
        var zone = DateTimeZoneProviders.Tzdb[order.Form.Practice.Zone];
        var begin = zone.AtLeniently(now.InZone(zone).Date.PlusDays(-DaysOpenBefore) + Opening).ToInstant();
        await using var office = SeedOffice.In(folder, order.Services.GetRequiredService<ShippedRules>(), begin);
        await Prepare(office, live, stop);
        var opened = await office.Do((OpenPractice open) => open.For(order.Form, stop));
        if (!opened.TryGet(out var owner)) return opened;
        await DemoYear.Run(office, new Actor(owner, order.Form.OwnerName.Trim(), Policy.Owner), new DemoCalendar(zone, now), order.Progress, stop);
        var over = await office.Read(made => new BringOver(made, live).Practice(stop));
        return over ? owner : OpenPractice.WasOpened();
    }

    private static async Task Prepare(SeedOffice office, OfficeDb live, CancellationToken stop)
    {
        if (await office.Do((PrepareDatabase prepare) => prepare.Now(stop)) is { } refusal) throw new InvalidOperationException(refusal.Sentence);
        if (await office.Read(made => new BringOver(live, made).Rulebook(stop))) return;
        await office.Must((AdoptShippedRulebook adopt) => adopt.AtStartUp(stop));
    }

    private sealed record Order(IServiceProvider Services, FirstRunForm Form, IProgress<SeedProgress>? Progress);
}
