using System.Security.Cryptography;
using CoachOffice.Domain.Access;
using CoachOffice.SeedDemo.Making;
using CoachOffice.SeedDemo.People;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Lets a year pass, day by day.</summary>
internal static class DemoYear
{
    /// <summary>From the first day to the moment of opening.</summary>
    public static async Task Run(SeedOffice office, Actor owner, DemoCalendar calendar, IProgress<SeedProgress>? progress, CancellationToken stop)
    {
        var cast = await Hire(office, owner, stop);
        var book = await office.Do((Rulebooks books) => books.InForce(stop));
        var scene = new Scene(office, calendar, cast, book.Book);
        var lives = DemoPeople.All.Select((persona, seat) => new StudentLife(persona, seat, scene)).ToList();
        var day = new DemoDay(scene, lives);
        var all = calendar.Days.ToList();
        for (var i = 0; i < all.Count; i++)
        {
            stop.ThrowIfCancellationRequested();
            await day.Pass(all[i], stop);
            progress?.Report(new SeedProgress(i + 1, all.Count, "Letting a year pass at the academy"));
        }

        await new ClosingHour(scene).Pass(stop);
    }

    private static async Task<Cast> Hire(SeedOffice office, Actor owner, CancellationToken stop) => new(
        owner,
        await Hire(office, owner, ("Ilse Brandvold", "ilse@academy.example", Policy.Coach), stop),
        await Hire(office, owner, ("Tomás Quispe Arrieta", "tomas@academy.example", Policy.Coach), stop),
        await Hire(office, owner, ("Wren Okonjo", "desk@academy.example", Policy.Desk), stop));

    // Nobody knows these passwords: the owner lets real people in with accounts of their own.
    private static async Task<Actor> Hire(SeedOffice office, Actor owner, (string Name, string Mail, Policy Policy) person, CancellationToken stop)
    {
        var form = new NewAccountForm { DisplayName = person.Name, Email = person.Mail, Policy = person.Policy, Password = Convert.ToBase64String(RandomNumberGenerator.GetBytes(48)) };
        return new Actor(await office.Must((AddAccount add) => add.For(form, owner, stop)), person.Name, person.Policy);
    }
}
