using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Takes an offering out of what can be booked, or puts it back; what is booked stays.</summary>
public sealed class ArchiveOffering(OfficeDb db, PracticeClock clock, AuditTrail trail)
{
    /// <summary>The offering; saying so twice is no fault.</summary>
    public async Task<Outcome<OfferingId>> Set(OfferingId id, bool archived, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change what is offered");
        if (await db.Offerings.SingleOrDefaultAsync(o => o.Id == id, stop) is not { } offering) return SetUpRefusals.NoOffering;
        if (archived == offering.ArchivedAt is not null) return id;
        if (archived) offering.Archive(clock.Now);
        else offering.Restore();
        trail.Add(actor, archived ? "offering-archived" : "offering-restored", AuditSubject.Of(id));
        return await db.TrySave(stop) == Saved.Yes ? id : SetUpRefusals.Busy;
    }
}
