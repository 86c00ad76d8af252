using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>Keeps the student's own if-then sentence.</summary>
public sealed class KeepIfThen(OfficeDb db, AuditTrail trail)
{
    private const int Longest = 400;

    /// <summary>The plan's id, or why not.</summary>
    public async Task<Outcome<PlanId>> From(string ifThen, LinkPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        if ((ifThen ?? "").Length > Longest) return new Refusal("if-then-too-long", "The sentence holds up to 400 characters.", "IfThen");
        var plan = await db.Plans.SingleOrDefaultAsync(p => p.Id == pass.PlanId && p.StudentId == pass.StudentId, stop);
        if (plan is null) return new Refusal("plan-not-found", "There is no such plan.");
        plan.Promise(ifThen ?? "");
        trail.Add(Actor.Student, "if-then-kept", AuditSubject.Of(plan.Id));
        return await db.TrySave(stop) == Saved.Yes ? plan.Id : new Refusal(Clash.Code, "The plan changed just now; please send your sentence once more.");
    }
}
