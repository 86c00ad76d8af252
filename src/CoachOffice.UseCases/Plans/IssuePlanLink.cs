using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>Makes a private link a coach prints or hands over in person.</summary>
public sealed class IssuePlanLink(OfficeDb db, PrivateLinks links, AuditTrail trail)
{
    // As long as a plan of two focuses usually lasts (own judgement); the coach may end it any day.
    private static readonly Duration Life = Duration.FromDays(120);

    /// <summary>The address with the token in it; it cannot be shown again.</summary>
    public async Task<Outcome<Uri>> For(PlanId plan, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach) return NotAllowed.To("hand out private links");
        var status = await db.Plans.Where(p => p.Id == plan).Select(p => (PlanStatus?)p.Status).SingleOrDefaultAsync(stop);
        if (status is null) return new Refusal("plan-not-found", "There is no such plan.");
        if (status is not (PlanStatus.Active or PlanStatus.OnHold or PlanStatus.Completed))
            return new Refusal("plan-not-in-hand", "Approve the plan first: a draft has no private link.");
        var practice = await db.Practices.AsNoTracking().SingleAsync(stop);
        var token = await links.Mint(plan, Life, stop: stop);
        trail.Add(actor, "link-issued", AuditSubject.Of(plan));
        await db.SaveChangesAsync(stop);
        return new Uri($"{practice.PublicAddress}/p/{token}");
    }
}
