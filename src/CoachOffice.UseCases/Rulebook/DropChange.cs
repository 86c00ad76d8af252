using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Drops gathered changes of the rulebook; the last drop can be taken back.</summary>
public sealed class DropChange(OfficeDb db, AuditTrail trail, IClock clock)
{
    /// <summary>Drops the change of one entry, all of them when null. How many wait then.</summary>
    public async Task<Outcome<int>> Of(EntryId? entry, Actor actor, CancellationToken stop = default)
    {
        if (EditChecks.Right(actor) is { } against) return against;
        var work = await db.Work(actor, stop);
        work.Drop([.. work.Edits.Select(e => e.Id).Where(id => entry is null || id == entry)], clock.GetCurrentInstant());
        trail.Add(actor, "rulebook-change-dropped", AuditSubject.Of(actor.Account!.Value), $"waiting:{work.Edits.Count}");
        return await db.TrySave(stop) == Saved.Yes ? work.Edits.Count : RulebookWorks.Busy;
    }
}
