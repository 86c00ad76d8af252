using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Access;

/// <summary>Ends every private link of a plan at once, e.g. when one went to the wrong address.</summary>
public sealed class RevokeLinks(OfficeDb db, AuditTrail trail, IClock clock)
{
    /// <summary>How many were ended.</summary>
    public async Task<Outcome<int>> Of(PlanId plan, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayKeepStudents) return NotAllowed.To("revoke private links");
        if (!await db.Plans.AnyAsync(p => p.Id == plan, stop)) return new Refusal("plan-not-found", "There is no such plan.");
        var links = await db.PrivateLinks.Where(l => l.PlanId == plan && l.RevokedAt == null).ToListAsync(stop);
        foreach (var link in links) link.Revoke(clock.GetCurrentInstant());
        trail.Add(actor, "links-revoked", AuditSubject.Of(plan), $"count:{links.Count}");
        await db.SaveChangesAsync(stop);
        return links.Count;
    }
}
