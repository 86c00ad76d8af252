using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Puts a bay or room away, or brings it back; what is booked in it stays.</summary>
public sealed class ArchiveBay(OfficeDb db, PracticeClock clock, AuditTrail trail)
{
    /// <summary>The bay; saying so twice is no fault.</summary>
    public async Task<Outcome<ResourceId>> Set(ResourceId id, bool archived, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change bays");
        if (await db.Resources.SingleOrDefaultAsync(r => r.Id == id, stop) is not { } bay) return SetUpRefusals.NoBay;
        if (archived == bay.ArchivedAt is not null) return id;
        if (archived) bay.Archive(clock.Now);
        else bay.Restore();
        trail.Add(actor, archived ? "bay-archived" : "bay-restored", AuditSubject.Of(id));
        return await db.TrySave(stop) == Saved.Yes ? id : SetUpRefusals.Busy;
    }
}
