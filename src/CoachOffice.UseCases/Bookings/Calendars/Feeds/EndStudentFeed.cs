using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>Ends the address of a student's calendar.</summary>
public sealed class EndStudentFeed(OfficeDb db, CalendarFeeds feeds, AuditTrail trail)
{
    /// <summary>How many were ended; none twice.</summary>
    public async Task<int> Of(VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var ended = await feeds.End(feeds.Of(pass.StudentId), stop);
        trail.Add(Actor.Student, "calendar-address-ended", AuditSubject.Of(pass.StudentId));
        await db.SaveChangesAsync(stop);
        return ended;
    }
}
