using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>Messages that come from time rather than from a deed. Sealed classes of this shape are found by themselves.</summary>
public interface ITimedMessages
{
    /// <summary>What is due, or will be within the weeks the follow-ups page shows; the same every time it is asked until something changes.</summary>
    Task<IReadOnlyList<DueMessage>> Due(CancellationToken stop);
}
