using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.UseCases;
using CoachOffice.UseCases.Rulebook;
using Microsoft.Extensions.Configuration;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.Benchmarks.Office;

/// <summary>The office's operations on a data folder, in this process and without pages.</summary>
internal sealed class OpenOffice : IAsyncDisposable
{
    private readonly ServiceProvider _services;

    /// <param name="folder">The data folder.</param>
    /// <param name="rules">Other rules than the shipped ones.</param>
    /// <param name="time">Another clock than the machine's.</param>
    /// <param name="settings">What differs from the office's own settings.</param>
    public OpenOffice(string folder, ShippedRules? rules = null, TimeProvider? time = null, IReadOnlyDictionary<string, string?>? settings = null)
    {
        var configuration = new ConfigurationBuilder().AddInMemoryCollection(settings ?? new Dictionary<string, string?>(StringComparer.Ordinal)).Build();
        var services = new ServiceCollection().AddSingleton<IConfiguration>(configuration).AddSingleton(DataFolder.At(folder));
        if (rules is not null) services.AddSingleton(rules);
        if (time is not null) services.AddSingleton(time);
        _services = services.AddCoachOffice(configuration).BuildServiceProvider();
    }

    /// <summary>For what opens a scope of its own.</summary>
    public IServiceScopeFactory Scopes => _services.GetRequiredService<IServiceScopeFactory>();

    /// <summary>Runs one operation as one request would.</summary>
    public async Task<T> Do<TOperation, T>(Func<TOperation, Task<T>> act)
        where TOperation : notnull
    {
        await using var scope = _services.CreateAsyncScope();
        return await act(scope.ServiceProvider.GetRequiredService<TOperation>());
    }

    /// <summary>Runs one operation that must succeed.</summary>
    public async Task<T> Must<TOperation, T>(Func<TOperation, Task<Outcome<T>>> act)
        where TOperation : notnull
    {
        var outcome = await Do(act);
        return outcome.TryGet(out var value) ? value : throw new InvalidOperationException(string.Join("; ", outcome.Refusals.Select(r => r.Sentence)));
    }

    public ValueTask DisposeAsync() => _services.DisposeAsync();
}
