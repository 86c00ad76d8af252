using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Time.Testing;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Fixtures;

/// <summary>The whole office on one database with a clock of the test's own. Each <c>Do</c> is a request: a scope of its own.</summary>
public sealed class TestOffice : IAsyncDisposable
{
    private readonly ServiceProvider _services;
    private readonly string _folder = Directory.CreateTempSubdirectory("coachoffice-office-").FullName;
    private Dictionary<Policy, Actor> _actors = [];

    private TestOffice(OfficeDatabase database, Action<IServiceCollection>? more)
    {
        var settings = new Dictionary<string, string?>
        {
            ["Office:Database:Provider"] = database.Provider.ToString(),
            ["Office:Database:ConnectionString"] = database.ConnectionString,
        };
        var services = new ServiceCollection().AddSingleton<TimeProvider>(Time).AddSingleton(DataFolder.At(_folder));
        more?.Invoke(services);
        var configuration = new ConfigurationBuilder().AddInMemoryCollection(settings).Build();
        _services = services.AddSingleton<IConfiguration>(configuration).AddCoachOffice(configuration).BuildServiceProvider(validateScopes: true);
        Database = database;
    }

    /// <summary>Monday 2 March 2026, 09:00 in London, until the test moves it.</summary>
    public FakeTimeProvider Time { get; } = new(new DateTimeOffset(2026, 3, 2, 9, 0, 0, TimeSpan.Zero));

    public Instant Now => Instant.FromDateTimeOffset(Time.GetUtcNow());

    public OfficeDatabase Database { get; }

    /// <summary>The folder for files of this office.</summary>
    public string Folder => _folder;

    public IServiceProvider Services => _services;

    public Actor Owner => _actors[Policy.Owner];

    public Actor Coach => _actors[Policy.Coach];

    public Actor Desk => _actors[Policy.Desk];

    public static async Task<TestOffice> On(OfficeDatabase database, bool opened, Action<IServiceCollection>? more = null)
    {
        var office = new TestOffice(database, more);
        if (opened)
        {
            var accounts = await office.Read(db => db.Users.AsNoTracking().ToListAsync());
            office._actors = accounts.ToDictionary(a => a.Policy, a => a.AsActor());
        }

        return office;
    }

    /// <summary>Runs one operation as one request would.</summary>
    public async Task<T> Do<TOperation, T>(Func<TOperation, Task<T>> act)
        where TOperation : notnull
    {
        await using var scope = _services.CreateAsyncScope();
        return await act(scope.ServiceProvider.GetRequiredService<TOperation>());
    }

    /// <summary>Runs one operation and gives its value; a refusal fails the test with its code.</summary>
    public async Task<T> Must<TOperation, T>(Func<TOperation, Task<Outcome<T>>> act)
        where TOperation : notnull
    {
        var outcome = await Do(act);
        Assert.True(outcome.Succeeded, string.Join("; ", outcome.Refusals.Select(r => $"{r.Code}: {r.Sentence}")));
        return outcome.Value;
    }

    /// <summary>Runs one operation that must be refused and gives its refusals.</summary>
    public async Task<IReadOnlyList<Refusal>> Refuses<TOperation, T>(Func<TOperation, Task<Outcome<T>>> act)
        where TOperation : notnull
    {
        var outcome = await Do(act);
        Assert.False(outcome.Succeeded, "This was expected to be refused.");
        return outcome.Refusals;
    }

    /// <summary>Looks into the database.</summary>
    public Task<T> Read<T>(Func<OfficeDb, Task<T>> read) => Do(read);

    /// <summary>Changes the database behind the operations' back.</summary>
    public Task Change(Func<OfficeDb, Task> change) => Do<OfficeDb, int>(async db =>
    {
        await change(db);
        return await db.SaveChangesAsync();
    });

    public async ValueTask DisposeAsync()
    {
        await _services.DisposeAsync();
        Directory.Delete(_folder, recursive: true);
    }
}
