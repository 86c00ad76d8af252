using CoachOffice.Data;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Reading;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Compiled rulebooks by their hash. Which one is in force is asked of the database each time, so every node drafts by the same book.</summary>
public sealed class Rulebooks(IServiceScopeFactory scopes, BookShelf shelf) : IDisposable
{
    private static readonly CompiledQuery<int, string> HashInForce = new((db, most) => db.BooksInForce.Select(b => b.Sha256).Take(most));

    /// <summary>Books kept compiled at most; the one not asked for longest goes first, and a draft that is being made keeps its own.</summary>
    public const int MostKept = 8;

    private readonly LastAsked<CompiledRulebook> _books = new(MostKept);
    private readonly SemaphoreSlim _one = new(1, 1);

    /// <summary>A book by its hash; throws <see cref="InvalidOperationException"/> when its text was never kept.</summary>
    public async Task<CompiledRulebook> For(string sha256, CancellationToken stop = default)
    {
        if (_books.Find(sha256) is { } known) return known;
        await _one.WaitAsync(stop);
        try
        {
            return _books.Find(sha256) ?? _books.Keep(sha256, Compile(sha256, await TextOf(sha256, stop)));
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
        return await HashInForce.Rows(db, 1, stop) is not [var sha256] ? throw new InvalidOperationException("No rulebook was adopted: AdoptShippedRulebook runs at start-up.") : await For(sha256, stop);
    }

    /// <summary>Takes a book that somebody has just compiled, so that nobody has to again.</summary>
    public void Keep(CompiledRulebook book)
    {
        ArgumentNullException.ThrowIfNull(book);
        _books.Keep(book.Sha256, book);
    }

    /// <inheritdoc/>
    public void Dispose() => _one.Dispose();

    private async Task<RulebookText> TextOf(string sha256, CancellationToken stop)
    {
        await using var scope = scopes.CreateAsyncScope();
        var db = scope.ServiceProvider.GetRequiredService<OfficeDb>();
        var kept = await db.KeptRulebooks.AsNoTracking().SingleOrDefaultAsync(b => b.Sha256 == sha256, stop)
            ?? throw new InvalidOperationException($"No rulebook is kept under {sha256}.");
        return await db.FilesOf(kept, stop);
    }

    private CompiledRulebook Compile(string sha256, RulebookText files)
    {
        var read = shelf.Read(files);
        return read.TryGet(out var loaded)
            ? shelf.Compile(loaded)
            : throw new InvalidOperationException($"The rulebook kept under {sha256} is no longer readable: {read.Faults[0]}");
    }
}
