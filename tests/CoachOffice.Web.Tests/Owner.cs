using CoachOffice.Data;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Web.Tests;

/// <summary>The person who opens the practice in most tests.</summary>
internal static class Owner
{
    public const string Name = "Marianne Wetherby";
    public const string Email = "marianne@example.org";
    public const string Password = "four quiet herons walk";

    /// <summary>What the owner gives to a person they let in.</summary>
    public const string FirstPassword = "seven slow barges pass";

    /// <summary>A practice that was opened once for all tests; each takes a copy of its files.</summary>
    private static readonly Lazy<Task<string>> Opened = new(OpenOnce);

    /// <summary>The owner of an open practice, signed in and standing on Today.</summary>
    public static async Task<Visitor> OpensThePractice(this OfficeHost office)
    {
        foreach (var file in Directory.EnumerateFiles(await Opened.Value)) File.Copy(file, Path.Combine(office.DataFolder, Path.GetFileName(file)));
        var owner = await office.SignsIn();
        Assert.Equal("/", owner.Path);
        return owner;
    }

    private static async Task<string> OpenOnce()
    {
        var kept = Directory.CreateTempSubdirectory("coachoffice-template-").FullName;
        AppDomain.CurrentDomain.ProcessExit += (_, _) => Directory.Delete(kept, recursive: true);
        using var office = new OfficeHost();
        var owner = new Visitor(office);
        await owner.Open("/");
        await owner.Send("form", FirstRun());
        Assert.Equal("/account/second-factor", owner.Path);
        await using var scope = office.Services.CreateAsyncScope();
        // What still lies in the log of SQLite goes into the one file that is copied.
        await scope.ServiceProvider.GetRequiredService<OfficeDb>().Database.ExecuteSqlRawAsync("PRAGMA wal_checkpoint(TRUNCATE)");
        File.Copy(Path.Combine(office.DataFolder, "office.db"), Path.Combine(kept, "office.db"));
        return kept;
    }

    /// <summary>The first-run form, filled in.</summary>
    public static (string Name, string? Value)[] FirstRun() =>
    [
        ("Input.OwnerName", Name), ("Input.Email", Email), ("Input.Password", Password), ("Input.PracticeName", "Hill Lane Golf Lessons"), ("Input.Zone", "Europe/London"), ("Input.Currency", "gbp"),
    ];

    /// <summary>Signs in with mail address and password.</summary>
    public static async Task<Visitor> SignsIn(this OfficeHost office, string email = Email, string password = Password)
    {
        var person = new Visitor(office);
        await person.Open("/sign-in");
        await person.Send("form", ("Input.Email", email), ("Input.Password", password));
        return person;
    }

    /// <summary>The owner lets a person in, who then signs in.</summary>
    public static async Task<Visitor> LetsIn(this Visitor owner, OfficeHost office, string policy)
    {
        await owner.Open("/settings/accounts");
        var email = $"{policy}@example.org";
        await owner.Send("form[action$='Add']", ("Input.DisplayName", $"Person at the {policy}"), ("Input.Email", email), ("Input.Password", FirstPassword), ("Input.Policy", policy));
        Assert.Equal(System.Net.HttpStatusCode.OK, owner.Status);
        return await office.SignsIn(email, FirstPassword);
    }
}
