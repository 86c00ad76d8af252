using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Takes back the last drop of gathered rulebook changes.</summary>
public sealed class TakeBackDrop(OfficeDb db, AuditTrail trail, IClock clock)
{
    /// <summary>How many changes wait then.</summary>
    public async Task<Outcome<int>> By(Actor actor, CancellationToken stop = default)
    {
        if (EditChecks.Right(actor) is { } against) return against;
        var work = await db.Work(actor, stop);
        work.TakeBack(clock.GetCurrentInstant());
        trail.Add(actor, "rulebook-change-taken-back", AuditSubject.Of(actor.Account!.Value), $"waiting:{work.Edits.Count}");
        return await db.TrySave(stop) == Saved.Yes ? work.Edits.Count : RulebookWorks.Busy;
    }
}
