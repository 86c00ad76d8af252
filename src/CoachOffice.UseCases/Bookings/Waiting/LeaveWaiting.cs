using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Waiting;

/// <summary>A student leaves the waiting list. A place that is being offered is let go like any held lesson.</summary>
public sealed class LeaveWaiting(OfficeDb db, AuditTrail trail)
{
    /// <summary>The place in line; leaving twice is no fault.</summary>
    public async Task<Outcome<Guid>> Of(Guid id, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var student = pass.StudentId;
        var waiting = await db.WaitingPlaces.SingleOrDefaultAsync(w => w.Id == id && w.StudentId == student, stop);
        if (waiting is null) return new Refusal("waiting-not-found", "You do not wait for that.");
        if (waiting.Status == WaitingStatus.Offered) return new Refusal("waiting-offered", "A place is kept for you just now: take it, or let it go.");
        if (waiting.Status != WaitingStatus.Waiting) return id;
        waiting.Leave();
        trail.Add(Actor.Student, "waiting-left", AuditSubject.Of(student), $"waiting:{id}");
        return await db.TrySave(stop) == Saved.Yes ? id : new Refusal(Clash.Code, "A place became free for you at the same moment; look again.");
    }
}
