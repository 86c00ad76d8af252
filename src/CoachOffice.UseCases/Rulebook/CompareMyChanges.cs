using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Drafting;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Begins to tell which past drafts the account's gathered changes would make otherwise. Keeps nothing.</summary>
public sealed class CompareMyChanges(OfficeDb db, StandingBooks books, BeginWhatWouldChange begin)
{
    /// <summary>The hash of the book as it would be, or why it cannot be compared: nothing gathered, or faults.</summary>
    public async Task<Outcome<string>> By(Actor actor, CancellationToken stop = default)
    {
        if (EditChecks.Right(actor) is { } against) return against;
        var work = await db.WorkSeen(actor, stop);
        if (work.Edits.Count == 0) return new Refusal("nothing-changed", "No change of yours waits, so there is nothing to compare.");
        var tried = EditProposal.Of(books.Trial, await books.MustStand(stop), work.Edits);
        if (tried.Compiled is not { } compiled) return new Refusal(TriedBook.Code, "Your changes have faults; put them right first.");
        return await begin.By(compiled, actor, stop);
    }
}
