using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>Makes the address at which a student's calendar program looks up their own lessons; an earlier one ends.</summary>
public sealed class MakeStudentFeed(OfficeDb db, CalendarFeeds feeds, AuditTrail trail)
{
    /// <summary>The address; it cannot be shown again.</summary>
    public async Task<Uri> For(VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var address = await feeds.Make(feeds.Of(pass.StudentId), (id, sha256, now) => CalendarFeed.Of(id, sha256, pass.StudentId, now), stop);
        trail.Add(Actor.Student, "calendar-address-made", AuditSubject.Of(pass.StudentId));
        await db.SaveChangesAsync(stop);
        return address;
    }
}
