using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>
/// Writes, holds, moves and takes back what is due to a student, in the transaction of what causes it.
/// Changes are single statements with their condition, so that a message just being sent is never called back to life.
/// </summary>
public sealed class PlanMessages(OfficeDb db, OfficeMessages office)
{
    /// <summary>Writes a message; the same cause twice stays one message.</summary>
    public Task Write(DueMessage due, CancellationToken stop = default) => office.Write(due, stop);

    /// <summary>The plan is paused: nothing of it goes out.</summary>
    public Task Hold(PlanId plan, CancellationToken stop = default) =>
        db.Messages.Where(m => m.PlanId == plan && m.State == MessageState.Waiting).ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Held), stop);

    /// <summary>The plan goes on: what was held is due again, not before an instant.</summary>
    public async Task Release(PlanId plan, Instant notBefore, CancellationToken stop = default)
    {
        var held = db.Messages.Where(m => m.PlanId == plan && m.State == MessageState.Held);
        await held.Where(m => m.DueAt < notBefore).ExecuteUpdateAsync(m => m.SetProperty(x => x.DueAt, notBefore), stop);
        await held.ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Waiting).SetProperty(x => x.Attempts, 0), stop);
    }

    /// <summary>The plan ended: nothing of it goes out any more, save the kinds named.</summary>
    public Task End(PlanId plan, string why, IReadOnlyList<MessageKind> but, CancellationToken stop = default) =>
        Skip(db.Messages.Where(m => m.PlanId == plan && !but.Contains(m.Kind)), why, stop);

    /// <summary>What a message asked for is answered, or not wanted any more.</summary>
    public Task EndAbout(Guid subject, string why, CancellationToken stop = default) => Skip(db.Messages.Where(m => m.SubjectId == subject), why, stop);

    /// <summary>What speaks of a re-test goes out at another time.</summary>
    public Task MoveAbout(Guid subject, Instant dueAt, CancellationToken stop = default) =>
        Open(db.Messages.Where(m => m.SubjectId == subject)).ExecuteUpdateAsync(m => m.SetProperty(x => x.DueAt, dueAt), stop);

    /// <summary>Encouragement that still waits goes out at another time; false when none waits.</summary>
    public async Task<bool> MoveNudge(PlanId plan, Instant dueAt, CancellationToken stop = default) =>
        await Open(db.Messages.Where(m => m.PlanId == plan && m.Kind == MessageKind.PracticeNudge)).ExecuteUpdateAsync(m => m.SetProperty(x => x.DueAt, dueAt), stop) > 0;

    private static IQueryable<Message> Open(IQueryable<Message> messages) =>
        messages.Where(m => m.State == MessageState.Waiting || m.State == MessageState.AwaitsApproval || m.State == MessageState.Held);

    private static Task<int> Skip(IQueryable<Message> messages, string why, CancellationToken stop) =>
        messages.Where(m => m.State == MessageState.Waiting || m.State == MessageState.AwaitsApproval || m.State == MessageState.Held || m.State == MessageState.NeedsAttention || m.State == MessageState.Unknown)
            .ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Skipped).SetProperty(x => x.LastProblem, why), stop);
}
