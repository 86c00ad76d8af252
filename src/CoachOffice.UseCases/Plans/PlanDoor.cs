using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Plans;

/// <summary>What every deed on a plan does alike: right, version, all or nothing, an audit row.</summary>
public sealed class PlanDoor(OfficeDb db, AuditTrail trail, PracticeClock clock, INewIds ids)
{
    /// <summary>Now, to the millisecond.</summary>
    public NodaTime.Instant Now => clock.Now;

    /// <summary>The door for new identifiers.</summary>
    public INewIds Ids => ids;

    /// <summary>Today in the practice's zone.</summary>
    public Task<NodaTime.LocalDate> Today(CancellationToken stop = default) => clock.Today(stop);

    /// <summary>An audit row, in the caller's transaction.</summary>
    public void Note(Domain.Access.Actor actor, string action, AuditSubject subject, string detail) => trail.Add(actor, action, subject, detail);

    /// <summary>A new identifier.</summary>
    public Guid NewId() => ids.Next();

    /// <summary>A step in the plan's life, taken now.</summary>
    public PlanStep Step(Domain.Access.Actor actor, string reason)
    {
        ArgumentNullException.ThrowIfNull(actor);
        return new PlanStep(ids.Next(), clock.Now, actor.Name, reason);
    }

    /// <summary>Runs a change inside one transaction; the change says what stands against it, or nothing.</summary>
    public async Task<Outcome<PlanId>> Change(PlanDeed deed, Func<Plan, Task<IReadOnlyList<Refusal>>> change, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(deed);
        ArgumentNullException.ThrowIfNull(change);
        if (!deed.Actor.MayTeach) return NotAllowed.To(deed.Doing);
        await using var transaction = await db.Database.BeginTransactionAsync(stop);
        var plan = await db.Plans.Include(p => p.Stages).Include(p => p.Changes).SingleOrDefaultAsync(p => p.Id == deed.Plan, stop);
        if (plan is null) return new Refusal("plan-not-found", "There is no such plan.");
        if (deed.Version is { } shown && plan.Version != shown) return await Changed(plan.Id, stop);
        var against = await change(plan);
        if (against.Count > 0)
        {
            db.ChangeTracker.Clear();
            return Outcome<PlanId>.Refused(against);
        }

        // The whole changes with any part of it: two deeds at once on one plan never both pass.
        db.Entry(plan).Property(p => p.Message).IsModified = true;
        trail.Add(deed.Actor, deed.Action, AuditSubject.Of(plan.Id), deed.Detail);
        if (await db.TrySave(stop) != Saved.Yes)
        {
            await transaction.RollbackAsync(stop);
            return await Changed(deed.Plan, stop);
        }

        await transaction.CommitAsync(stop);
        return plan.Id;
    }

    private async Task<Refusal> Changed(PlanId plan, CancellationToken stop)
    {
        db.ChangeTracker.Clear();
        var last = await db.AuditEntries.Where(a => a.SubjectId == plan.Value).OrderByDescending(a => a.At).ThenByDescending(a => a.Id).FirstOrDefaultAsync(stop);
        return new Refusal(Clash.Code, $"{last?.ActorName ?? "Someone else"} changed this plan after you opened it ({last?.Action.Replace('-', ' ') ?? "unknown"}). Nothing was overwritten: look at it again, then repeat your change.");
    }
}
