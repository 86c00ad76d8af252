using CoachOffice.Data;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Takes what waits out of the post when a student stops it, in the caller's transaction. What is being handed over this very second may still arrive.</summary>
public sealed class EndStopped(OfficeDb db)
{
    /// <summary>No more of these kinds, with a code that says why; an approved plan is left to a person.</summary>
    public async Task Of(StudentId student, IReadOnlyList<MessageKind> kinds, string why, CancellationToken stop = default)
    {
        var open = db.Messages.Where(m => m.StudentId == student && kinds.Contains(m.Kind) && (m.State == MessageState.Waiting || m.State == MessageState.AwaitsApproval || m.State == MessageState.Held || m.State == MessageState.NeedsAttention));
        await open.Where(m => m.Kind != MessageKind.PlanDelivery).ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Skipped).SetProperty(x => x.LastProblem, why), stop);
        await open.Where(m => m.Kind == MessageKind.PlanDelivery && (m.State == MessageState.Waiting || m.State == MessageState.AwaitsApproval))
            .ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.NeedsAttention).SetProperty(x => x.LastProblem, why), stop);
    }
}
