using CoachOffice.Domain.FollowUps;
using NodaTime;

namespace CoachOffice.Data.FollowUps;

/// <summary>Due messages handed out one holder at a time. Each call is one statement that commits by itself.</summary>
public interface IOutbox
{
    /// <summary>
    /// The right to sweep, let go when disposed of; null while another program on this machine has it. One database file has one sweep at a time, held by a lock that
    /// ends with its program, so whatever others claimed there is left over from a program that died and is free at once. On a database server any number of nodes sweep.
    /// </summary>
    Task<IAsyncDisposable?> Turn(string owner, Instant now, CancellationToken stop);

    /// <summary>
    /// Takes messages that are waiting and due, of active plans (a second look also of completed ones) of students who are neither archived nor erased;
    /// nothing that a student stopped, save the plan itself, of which a person is told. A message without a plan waits for its time alone, unless its student is archived or erased. Fewest attempts first, then earliest. Raises their attempts.
    /// What a dead holder left comes last and one at a time: should one of them be what killed it, the others don't pay for it.
    /// </summary>
    Task<IReadOnlyList<Message>> Claim(ClaimOrder order, CancellationToken stop);

    /// <summary>The last look before a message is handed over: still claimed by this owner, still waiting, nothing stopped it meanwhile. Writes nothing.</summary>
    Task<bool> IsStillWanted(Sending sending, CancellationToken stop);

    /// <summary>Moves the end of the leases on all that an owner holds; how many those are.</summary>
    Task<int> Renew(string owner, Instant until, CancellationToken stop);

    /// <summary>As <see cref="IsStillWanted"/>, and notes that handing over begins now; a claimed message that has it set already was in flight when its holder died.</summary>
    Task<bool> MarkBegun(Sending sending, CancellationToken stop);

    /// <summary>Notes that the message left. False when the lease was lost meanwhile.</summary>
    Task<bool> MarkSent(Sending sending, CancellationToken stop);

    /// <summary>Notes that it did not leave; due again at <paramref name="again"/>, or waiting for a person when null. False when the lease was lost meanwhile.</summary>
    Task<bool> MarkFailed(Sending sending, string problem, Instant? again, CancellationToken stop);

    /// <summary>Notes that nobody knows whether it arrived and that it is not to be repeated by guess: a person decides.</summary>
    Task<bool> MarkUnknown(Sending sending, string problem, CancellationToken stop);

    /// <summary>Not now: due again at <paramref name="again"/>, the attempt not counted.</summary>
    Task<bool> PutOff(Sending sending, Instant again, CancellationToken stop);

    /// <summary>Not wanted any more, with a code that says why.</summary>
    Task<bool> Skip(Sending sending, string why, CancellationToken stop);

    /// <summary>Gives claimed messages back without counting the attempt, e.g. at shutdown; how many were still held.</summary>
    Task<int> GiveBack(IReadOnlyList<Guid> messages, string owner, CancellationToken stop);
}
