using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>Ends the address of a coach's calendar; programs that follow it get nothing any more.</summary>
public sealed class EndCoachFeed(OfficeDb db, CalendarFeeds feeds, AuditTrail trail)
{
    /// <summary>How many were ended; none twice.</summary>
    public async Task<Outcome<int>> Of(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } coach) return NotAllowed.To("follow a coach's calendar");
        var ended = await feeds.End(feeds.Of(coach), stop);
        trail.Add(actor, "calendar-address-ended", AuditSubject.Of(coach));
        await db.SaveChangesAsync(stop);
        return ended;
    }
}
