using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Tries an entry as it stands in a form together with the gathered changes, and keeps nothing.</summary>
public sealed class CheckEntry(OfficeDb db, StandingBooks books, StandingAnomalies before)
{
    /// <summary>Every fault, of the entry and of what it no longer fits to.</summary>
    public async Task<Outcome<WorkCheck>> Of(EntryEdit edit, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(edit);
        if (EditChecks.Right(actor) is { } against) return against;
        if (EditChecks.Edits([edit]).ToList() is { Count: > 0 } wrong) return Outcome<WorkCheck>.Refused(wrong);
        var work = await db.WorkSeen(actor, stop);
        var standing = await books.MustStand(stop);
        IReadOnlyList<EntryEdit> edits = [.. work.Edits.Where(e => e.Id != edit.Id), edit];
        return WorkTrial.Check(standing, edits, EditProposal.Of(books.Trial, standing, edits), before);
    }
}
