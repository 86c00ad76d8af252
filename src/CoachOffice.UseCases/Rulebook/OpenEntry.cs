using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Puts an entry of the rulebook on the editor's desk.</summary>
public sealed class OpenEntry(OfficeDb db, StandingBooks books)
{
    /// <summary>The entry, a blank one when null; a refusal when it is nowhere or the account may not change rules.</summary>
    public async Task<Outcome<EntryDesk>> Of(EntryId? id, Actor actor, CancellationToken stop = default)
    {
        if (EditChecks.Right(actor) is { } against) return against;
        var standing = await books.MustStand(stop);
        var loaded = standing.Loaded;
        var work = await db.WorkSeen(actor, stop);
        var mine = work.Edits.FirstOrDefault(e => e.Id == id);
        var own = loaded.Own.Written.Concat(loaded.Own.Removed).FirstOrDefault(e => e.Id == id);
        var text = id is null ? null : BookEntries.Find(loaded, id);
        if (id is not null && text is null && mine is null && own is null) return new Refusal("entry-not-found", $"The rulebook has no {id}.");
        return new EntryDesk
        {
            Id = id,
            Edition = work.Edits.Count == 0 ? standing.Edition.Number : work.Edition,
            InForce = text,
            Mine = mine,
            IsOwn = own is not null,
            Ships = own is null ? text is not null : own.Was is not null,
            Book = loaded.Book,
            Cases = loaded.Cases,
            Waiting = work.Edits,
        };
    }
}
