using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Lays the account's gathered changes over the edition that came into force meanwhile: they stay as they are, entries others changed too are then replaced by them.</summary>
public sealed class TakeNewBase(OfficeDb db, StandingBooks books, AuditTrail trail, IClock clock)
{
    /// <summary>Number of the edition they stand on now.</summary>
    public async Task<Outcome<int>> By(Actor actor, CancellationToken stop = default)
    {
        if (EditChecks.Right(actor) is { } against) return against;
        var work = await db.Work(actor, stop);
        var number = (await books.MustStand(stop)).Edition.Number;
        work.LayOver(number, clock.GetCurrentInstant());
        trail.Add(actor, "rulebook-change-laid-over", AuditSubject.Of(actor.Account!.Value), $"edition:{number}");
        return await db.TrySave(stop) == Saved.Yes ? number : RulebookWorks.Busy;
    }
}
