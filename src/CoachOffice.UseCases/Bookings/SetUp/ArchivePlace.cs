using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Puts a place away, or brings it back. Nothing new is booked at an archived place; what is booked stays.</summary>
public sealed class ArchivePlace(OfficeDb db, PracticeClock clock, AuditTrail trail)
{
    /// <summary>The place; saying so twice is no fault.</summary>
    public async Task<Outcome<PlaceId>> Set(PlaceId id, bool archived, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayOwn) return NotAllowed.To("change places");
        if (await db.Places.SingleOrDefaultAsync(p => p.Id == id, stop) is not { } place) return SetUpRefusals.NoPlace;
        if (archived == place.ArchivedAt is not null) return id;
        if (archived) place.Archive(clock.Now);
        else place.Restore();
        trail.Add(actor, archived ? "place-archived" : "place-restored", AuditSubject.Of(id));
        return await db.TrySave(stop) == Saved.Yes ? id : SetUpRefusals.Busy;
    }
}
