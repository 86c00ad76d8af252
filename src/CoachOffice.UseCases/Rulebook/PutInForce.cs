using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Makes the account's gathered changes the next edition of the rulebook, all together; new drafts are made by it from then on.</summary>
public sealed class PutInForce(OfficeDb db, StandingBooks books, EditionPress press, EditionClash clash, IClock clock)
{
    /// <summary>The new edition, or why not: nothing gathered, every fault of the whole book with its place, each worked case that comes out otherwise, or who put another edition into force since these changes began. Nothing is lost then.</summary>
    public async Task<Outcome<AdoptedEdition>> By(string? why, Actor actor, CancellationToken stop = default)
    {
        if (EditChecks.Right(actor) is { } against) return against;
        var work = await db.Work(actor, stop);
        if (work.Edits.Count == 0) return new Refusal("nothing-changed", "No change of yours waits to be put into force. The history shows what is in force now.");
        if (EditChecks.Why(why) is { } missing) return missing;
        var (begunWith, edits) = (work.Edition, work.Edits);
        var standing = await books.MustStand(stop);
        if (standing.Edition.Number != begunWith) return Outcome<AdoptedEdition>.Refused(await clash.Since(begunWith, actor, stop));
        var tried = EditProposal.Of(books.Trial, standing, edits);
        if (tried.Against(standing) is { Count: > 0 } faults) return Outcome<AdoptedEdition>.Refused(faults);

        // Saved with the edition, in its transaction.
        work.Finish(clock.GetCurrentInstant());
        var saved = await press.Take(tried, standing, new EditionWish(EditionKind.Edit, why!.Trim(), actor), stop);
        return saved == Saved.Yes ? tried.After(standing) : Outcome<AdoptedEdition>.Refused(await clash.Since(begunWith, actor, stop));
    }
}
