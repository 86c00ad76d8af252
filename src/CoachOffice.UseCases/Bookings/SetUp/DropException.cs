using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Takes a closed or opened time out, so that the weekly hours hold again.</summary>
public sealed class DropException(OfficeDb db, AuditTrail trail)
{
    /// <summary>As it was, for an undo; or why not.</summary>
    public async Task<Outcome<ExceptionForm>> Of(Guid id, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (await db.HoursExceptions.SingleOrDefaultAsync(e => e.Id == id, stop) is not { } dropped) return SetUpRefusals.NoHours;
        if (!HoursRight.Of(actor, dropped.CoachId)) return HoursRight.Refused;
        db.HoursExceptions.Remove(dropped);
        trail.Add(actor, "hours-exception-dropped", AuditSubject.Hours(id));
        if (await db.TrySave(stop) != Saved.Yes) return SetUpRefusals.Busy;
        return new ExceptionForm { CoachId = dropped.CoachId, OpenAt = dropped.OpenAt, From = dropped.LocalFrom, Until = dropped.LocalUntil, Note = dropped.Note };
    }
}
