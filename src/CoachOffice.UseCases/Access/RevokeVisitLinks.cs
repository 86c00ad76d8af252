using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings.Calendars.Feeds;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>Ends every link to a student's own lessons at once, e.g. when one went to the wrong address, and the calendar address one may have made with it.</summary>
public sealed class RevokeVisitLinks(OfficeDb db, AuditTrail trail, IClock clock, CalendarFeeds feeds)
{
    /// <summary>How many were ended.</summary>
    public async Task<Outcome<int>> Of(StudentId student, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("revoke private links");
        if (!await db.Students.AnyAsync(s => s.Id == student, stop)) return new Refusal("student-not-found", "There is no such student.");
        var links = await db.PrivateLinks.Where(l => l.StudentId == student && l.Purpose == LinkPurpose.Visits && l.RevokedAt == null).ToListAsync(stop);
        foreach (var link in links) link.Revoke(clock.GetCurrentInstant());
        await feeds.End(feeds.Of(student), stop);
        trail.Add(actor, "visit-links-revoked", AuditSubject.Of(student), $"count:{links.Count}");
        await db.SaveChangesAsync(stop);
        return links.Count;
    }
}
