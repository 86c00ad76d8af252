using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.UseCases;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Rulebook;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using NodaTime;

namespace CoachOffice.SeedDemo.Making;

/// <summary>A whole office on a file of its own, with a clock, ids and a mail door of its own. Each <c>Do</c> is a request: a scope of its own.</summary>
internal sealed class SeedOffice : IAsyncDisposable
{
    private const int Seed = 20_260_302;

    private readonly ServiceProvider _services;
    private readonly OfficeDatabase _database;

    private SeedOffice(ServiceProvider services, OfficeDatabase database, Instant begin)
    {
        (_services, _database) = (services, database);
        Clock = (SeedClock)services.GetRequiredService<TimeProvider>();
        Clock.Advance(begin);
    }

    public SeedClock Clock { get; }

    public QuietDoor Door => (QuietDoor)_services.GetRequiredService<IMailDoor>();

    public INewIds Ids => _services.GetRequiredService<INewIds>();

    /// <summary>An office in a folder, not yet prepared.</summary>
    public static SeedOffice In(string folder, ShippedRules rules, Instant begin)
    {
        var database = OfficeDatabase.InFile(Path.Combine(folder, "demo.db"));
        var settings = new Dictionary<string, string?>
        {
            ["Office:Database:Provider"] = database.Provider.ToString(),
            ["Office:Database:ConnectionString"] = database.ConnectionString,
        };
        var configuration = new ConfigurationBuilder().AddInMemoryCollection(settings).Build();
        var services = new ServiceCollection()
            .AddSingleton<IConfiguration>(configuration)
            .AddSingleton<TimeProvider>(new SeedClock(begin))
            .AddSingleton<INewIds>(new SeededIds(Seed))
            .AddSingleton<IMailDoor>(new QuietDoor())
            .AddSingleton(DataFolder.At(folder))
            .AddSingleton(rules)
            .ConfigureDbContext<OfficeDb>(options => options.AddInterceptors(QuickConnection.Instance))
            .AddCoachOffice(configuration);
        return new SeedOffice(services.BuildServiceProvider(), database, begin);
    }

    /// <summary>Runs one operation as one request would.</summary>
    public async Task<T> Do<TOperation, T>(Func<TOperation, Task<T>> act)
        where TOperation : notnull
    {
        await using var scope = _services.CreateAsyncScope();
        return await act(scope.ServiceProvider.GetRequiredService<TOperation>());
    }

    /// <summary>Runs one operation that must succeed: a refusal in a made-up year is a defect.</summary>
    public async Task<T> Must<TOperation, T>(Func<TOperation, Task<Outcome<T>>> act)
        where TOperation : notnull
    {
        var outcome = await Do(act);
        return outcome.TryGet(out var value) ? value
            : throw new InvalidOperationException($"{typeof(TOperation).Name} refused: {string.Join("; ", outcome.Refusals.Select(r => $"{r.Code}: {r.Sentence}"))}");
    }

    /// <summary>Looks into the database.</summary>
    public Task<T> Read<T>(Func<OfficeDb, Task<T>> read) => Do(read);

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        _database.LetGo();
    }
}
