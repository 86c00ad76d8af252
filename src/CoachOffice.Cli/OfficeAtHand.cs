using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Cli;

/// <summary>An office's folder and settings, found as the pages find them, whether or not there is a database yet.</summary>
internal sealed class OfficeAtHand
{
    private readonly IConfigurationRoot _configuration;

    public OfficeAtHand(string? folder, IReadOnlyDictionary<string, string?>? over = null)
    {
        Folder = folder is null ? DataFolder.Find() : DataFolder.At(folder);
        var settings = new ConfigurationBuilder();
        settings.AddOfficeSettings(Folder, []);
        if (over is not null) settings.AddInMemoryCollection(over);
        _configuration = settings.Build();
        Database = OfficeDatabase.From(_configuration, Folder);
    }

    /// <summary>Whoever may read an office's folder from a shell may do there what its owner may.</summary>
    public static Actor Shell { get; } = new(null, "the command line", Policy.Owner);

    public DataFolder Folder { get; }

    public OfficeDatabase Database { get; }

    /// <summary>Runs an operation of the office that is there; refused when none is.</summary>
    public async Task<Outcome<T>> Do<TOperation, T>(Func<TOperation, Task<Outcome<T>>> act)
        where TOperation : notnull
    {
        await using var services = new ServiceCollection().AddSingleton(Folder).AddSingleton<IConfiguration>(_configuration).AddCoachOffice(_configuration).BuildServiceProvider();
        await using var scope = services.CreateAsyncScope();
        if (!await scope.ServiceProvider.GetRequiredService<OfficeDb>().Database.CanConnectAsync()) return OwnOffice.NoOffice(Folder.Path);
        if (await scope.ServiceProvider.GetRequiredService<PrepareDatabase>().Now(default) is { } refusal) return refusal;
        return await act(scope.ServiceProvider.GetRequiredService<TOperation>());
    }
}
