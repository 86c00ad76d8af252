using CoachOffice.Domain.FollowUps;

namespace CoachOffice.Data.FollowUps;

/// <summary>Due messages handed out one holder at a time. Each call is one statement that commits by itself.</summary>
public interface IOutbox
{
    /// <summary>
    /// Takes messages that are waiting and due, of active plans (a second look also of completed ones) of students who are neither archived nor erased; of a student who
    /// stopped messages only the plan itself is delivered. A message without a plan waits for its time alone, unless its student is archived or erased. Fewest attempts first, then earliest. Raises their attempts.
    /// </summary>
    Task<IReadOnlyList<Message>> Claim(ClaimOrder order, CancellationToken stop);

    /// <summary>Notes that handing over begins now; a claimed message that has it set already was in flight when its holder died. False when the lease was lost meanwhile.</summary>
    Task<bool> MarkBegun(Sending sending, CancellationToken stop);

    /// <summary>Notes that the message left. False when the lease was lost meanwhile.</summary>
    Task<bool> MarkSent(Sending sending, CancellationToken stop);

    /// <summary>Notes that it did not leave; due again at <paramref name="again"/>, or waiting for a person when null. False when the lease was lost meanwhile.</summary>
    Task<bool> MarkFailed(Sending sending, string problem, NodaTime.Instant? again, CancellationToken stop);

    /// <summary>Not now: due again at <paramref name="again"/>, the attempt not counted.</summary>
    Task<bool> PutOff(Sending sending, NodaTime.Instant again, CancellationToken stop);

    /// <summary>Not wanted any more, with a code that says why.</summary>
    Task<bool> Skip(Sending sending, string why, CancellationToken stop);

    /// <summary>Gives a claimed message back without counting the attempt, e.g. at shutdown.</summary>
    Task<bool> GiveBack(Sending sending, CancellationToken stop);
}
