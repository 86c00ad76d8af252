using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Makes the account's gathered changes the next edition of the rulebook, all together.</summary>
public sealed class PutInForce(OfficeDb db, EditRulebook edit, IClock clock)
{
    /// <summary>The new edition, or why not: nothing gathered, every fault, or who put another edition into force since these changes began. Nothing is lost then.</summary>
    public async Task<Outcome<AdoptedEdition>> By(string? why, Actor actor, CancellationToken stop = default)
    {
        if (EditChecks.Right(actor) is { } against) return against;
        var work = await db.Work(actor, stop);
        if (work.Edits.Count == 0) return new Refusal("nothing-changed", "No change of yours waits to be put into force. The history shows what is in force now.");
        var form = new RulebookForm(work.Edition, work.Edits, why ?? "");

        // Saved with the edition, in its transaction; a refusal leaves them where they are.
        work.Finish(clock.GetCurrentInstant());
        var adopted = await edit.By(form, actor, stop);
        if (!adopted.Succeeded) db.ChangeTracker.Clear();
        return adopted;
    }
}
