using CoachOffice.Data.FollowUps;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Leaves a claimed message to a person.</summary>
internal static class AskingPeople
{
    /// <summary>It did not go, or, where it may have arrived, nobody knows.</summary>
    public static async Task<SendingResult> Ask(this IOutbox outbox, Sending sending, string problem, CancellationToken stop)
    {
        if (problem == Problems.SentUnknown) await outbox.MarkUnknown(sending, problem, stop);
        else await outbox.MarkFailed(sending, problem, null, stop);
        return SendingResult.NeedsAttention;
    }
}
