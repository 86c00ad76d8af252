using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>Makes the address at which a coach's own calendar program looks up their lessons; an earlier one ends.</summary>
public sealed class MakeCoachFeed(OfficeDb db, CalendarFeeds feeds, AuditTrail trail)
{
    /// <summary>The address; it cannot be shown again.</summary>
    public async Task<Outcome<Uri>> For(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } coach) return NotAllowed.To("follow a coach's calendar");
        var address = await feeds.Make(feeds.Of(coach), (id, sha256, now) => CalendarFeed.Of(id, sha256, coach, now), stop);
        trail.Add(actor, "calendar-address-made", AuditSubject.Of(coach));
        await db.SaveChangesAsync(stop);
        return address;
    }
}
