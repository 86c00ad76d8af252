using System.Collections.Concurrent;
using CoachOffice.Data;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Reading;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Compiled rulebooks by their hash. Which one is in force is asked of the database each time, so every node drafts by the same book.</summary>
public sealed class Rulebooks(IServiceScopeFactory scopes) : IDisposable
{
    private readonly ConcurrentDictionary<string, CompiledRulebook> _books = new(StringComparer.Ordinal);
    private readonly SemaphoreSlim _one = new(1, 1);

    /// <summary>A book by its hash; throws <see cref="InvalidOperationException"/> when its text was never kept.</summary>
    public async Task<CompiledRulebook> For(string sha256, CancellationToken stop = default)
    {
        if (_books.TryGetValue(sha256, out var known)) return known;
        await _one.WaitAsync(stop);
        try
        {
            return _books.TryGetValue(sha256, out known) ? known : _books[sha256] = Compile(sha256, await TextOf(sha256, stop));
        }
        finally
        {
            _one.Release();
        }
    }

    /// <summary>The book new drafts are made by; throws <see cref="InvalidOperationException"/> before the first was adopted at start-up.</summary>
    public async Task<CompiledRulebook> InForce(CancellationToken stop = default)
    {
        await using var scope = scopes.CreateAsyncScope();
        return await InForce(scope.ServiceProvider.GetRequiredService<OfficeDb>(), stop);
    }

    /// <summary>The same, asked over a connection already at hand.</summary>
    public async Task<CompiledRulebook> InForce(OfficeDb db, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(db);
        var sha256 = await db.BooksInForce.Select(b => b.Sha256).SingleOrDefaultAsync(stop);
        return sha256 is null ? throw new InvalidOperationException("No rulebook was adopted: AdoptShippedRulebook runs at start-up.") : await For(sha256, stop);
    }

    /// <inheritdoc/>
    public void Dispose() => _one.Dispose();

    private async Task<string> TextOf(string sha256, CancellationToken stop)
    {
        await using var scope = scopes.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<OfficeDb>();
        return await db.KeptRulebooks.Where(b => b.Sha256 == sha256).Select(b => b.Text).SingleOrDefaultAsync(stop)
            ?? throw new InvalidOperationException($"No rulebook is kept under {sha256}.");
    }

    private static CompiledRulebook Compile(string sha256, string bundle)
    {
        var read = RulebookReader.Load(RulebookText.Unbundle(bundle));
        return read.TryGet(out var loaded)
            ? CompiledRulebook.Compile(loaded)
            : throw new InvalidOperationException($"The rulebook kept under {sha256} is no longer readable: {read.Faults[0]}");
    }
}
