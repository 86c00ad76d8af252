using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>Takes away the busy times of a calendar a coach brought.</summary>
public sealed class RemoveBusyTimes(OfficeDb db, AuditTrail trail)
{
    /// <summary>How many went.</summary>
    public async Task<Outcome<int>> Of(string source, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } coach) return NotAllowed.To("keep busy times");
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var gone = await db.BusyTimes.Where(b => b.CoachId == coach && b.Source == source).ExecuteDeleteAsync(stop);
        if (gone == 0) return new Refusal("busy-not-found", "There are no busy times under that name.");
        trail.Add(actor, "busy-times-removed", AuditSubject.Of(coach), $"count:{gone}");
        await db.SaveChangesAsync(stop);
        await transaction.CommitAsync(stop);
        return gone;
    }
}
