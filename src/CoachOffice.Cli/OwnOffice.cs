using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Access;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Cli;

/// <summary>The office on this machine, found and set as the pages find it, for a command that acts in it as one of its accounts.</summary>
internal static class OwnOffice
{
    /// <summary>Runs an operation; refused when there is no office, when it is another version's, or when nobody has that mail address.</summary>
    /// <param name="folder">The data folder; where the pages look for it when null.</param>
    /// <param name="mail">Mail address of the account that acts.</param>
    /// <param name="act">The operation.</param>
    public static async Task<Outcome<T>> Do<TOperation, T>(string? folder, string mail, Func<TOperation, Actor, Task<Outcome<T>>> act)
        where TOperation : notnull
    {
        if (folder is not null && !Directory.Exists(folder)) return NoOffice(folder);
        var data = folder is null ? DataFolder.Find() : DataFolder.At(folder);
        var settings = new ConfigurationBuilder();
        settings.AddOfficeSettings(data, []);
        var configuration = settings.Build();
        await using var services = new ServiceCollection().AddSingleton(data).AddSingleton<IConfiguration>(configuration).AddCoachOffice(configuration).BuildServiceProvider();
        await using var scope = services.CreateAsyncScope();
        if (await NotReady(scope.ServiceProvider, data) is { } refusal) return refusal;
        var found = await scope.ServiceProvider.GetRequiredService<FindActor>().ByMail(mail);
        return found.TryGet(out var actor) ? await act(scope.ServiceProvider.GetRequiredService<TOperation>(), actor) : Outcome<T>.Refused(found.Refusals);
    }

    // A command makes no office where there is none.
    private static async Task<Refusal?> NotReady(IServiceProvider services, DataFolder data) =>
        await services.GetRequiredService<OfficeDb>().Database.CanConnectAsync()
            ? await services.GetRequiredService<PrepareDatabase>().Now(default)
            : NoOffice(data.Path);

    internal static Refusal NoOffice(string folder) => new("office-not-found", $"There is no office in {folder}. Name its data folder by --data or {DataFolder.Variable}.");
}
