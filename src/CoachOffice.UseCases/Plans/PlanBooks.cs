using CoachOffice.Data;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting;
using CoachOffice.UseCases.Rulebook;
using Microsoft.EntityFrameworkCore;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Plans;

/// <summary>The book a plan was drafted by, which stays its book for life, and the one new drafts are made by.</summary>
public sealed class PlanBooks(OfficeDb db, Rulebooks rulebooks)
{
    /// <summary>The book in force.</summary>
    public async Task<Book> InForce(CancellationToken stop = default) => (await Compiled(stop)).Book;

    /// <summary>The book in force, ready to draft by.</summary>
    public Task<CompiledRulebook> Compiled(CancellationToken stop = default) => rulebooks.InForce(db, stop);

    /// <summary>A book by the hash a draft names.</summary>
    public async Task<Book> Named(string sha256, CancellationToken stop = default) => (await rulebooks.For(sha256, stop)).Book;

    /// <summary>The book a draft was made by.</summary>
    public async Task<Book> Of(DraftId draft, CancellationToken stop = default)
    {
        var sha = await db.StoredDrafts.Where(d => d.Id == draft).Select(d => d.RulebookSha256).SingleAsync(stop);
        return await Named(sha, stop);
    }
}
