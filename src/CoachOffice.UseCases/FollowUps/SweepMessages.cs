using CoachOffice.Data.FollowUps;
using CoachOffice.Domain;
using Microsoft.Extensions.Logging;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>Sends what is due, one message after the other. Any number of sweeps at once, on any number of machines, send each message once.</summary>
public sealed partial class SweepMessages(IOutbox outbox, ClaimedMessage claimed, IClock clock, INewIds ids, ILogger<SweepMessages> log)
{
    // One row at a time and a lease far longer than a mail server may take: a crash holds one message for five minutes.
    private static readonly Duration Lease = Duration.FromMinutes(5);
    private const int MostInOneSweep = 500;

    /// <summary>One sweep.</summary>
    public async Task<SweepResult> Once(CancellationToken stop)
    {
        var owner = $"sweep-{ids.Next():N}";
        var result = SweepResult.Nothing;
        for (var count = 0; count < MostInOneSweep && !stop.IsCancellationRequested; count++)
        {
            if (await outbox.Claim(new ClaimOrder(clock.GetCurrentInstant(), Lease, owner, 1), stop) is not [var message]) break;
            var sending = new Sending(message.Id, owner, clock.GetCurrentInstant());
            var one = message.Attempts > MailDispatch.MostAttempts ? await GiveUp(sending, stop) : await claimed.Carry(message, sending, stop);
            result = result.With(one);
            if (one != SendingResult.ServerDown) continue;
            LogServerDown(log, message.Id);
            break;
        }

        return result;
    }

    // A message that made the program stumble each time is left to a person.
    private async Task<SendingResult> GiveUp(Sending sending, CancellationToken stop)
    {
        await outbox.MarkFailed(sending, "gave-up", null, stop);
        return SendingResult.NeedsAttention;
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "Mail could not leave; message {Message} and those behind it are tried again later.")]
    private static partial void LogServerDown(ILogger log, Guid message);
}
