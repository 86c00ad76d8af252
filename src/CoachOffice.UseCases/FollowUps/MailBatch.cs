using CoachOffice.Data;
using CoachOffice.Data.FollowUps;
using CoachOffice.Domain;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>
/// Messages claimed together, on a context of their own: prepared while those before them are being sent, then handed over one after the other.
/// Of each student only the first is prepared ahead, as what goes out to somebody decides about what goes next.
/// </summary>
public sealed class MailBatch(OfficeDb db, IOutbox outbox, ClaimedMessages claimed, MailDispatch dispatch, IClock clock)
{
    private string _owner = "";
    private BatchTimes _times = new(Duration.Zero, Duration.Zero);
    private Instant _leaseUntil;
    private Queue<BatchItem> _items = new();

    /// <summary>Students these messages are about.</summary>
    public IReadOnlySet<StudentId> Students { get; private set; } = new HashSet<StudentId>();

    /// <summary>Nothing was due.</summary>
    public bool IsEmpty { get; private set; } = true;

    /// <summary>Claims what is due.</summary>
    /// <param name="order">For whom, how long, how many at most.</param>
    /// <param name="times">How long the lease must still run when a message is handed over.</param>
    public async Task Claim(ClaimOrder order, BatchTimes times)
    {
        ArgumentNullException.ThrowIfNull(order);
        (_owner, _times, _leaseUntil) = (order.Owner, times, order.Now + order.Lease);
        var messages = await outbox.Claim(order, CancellationToken.None);
        (IsEmpty, Students) = (messages.Count == 0, messages.Select(m => m.StudentId).OfType<StudentId>().ToHashSet());
        _items = new(messages.Select(m => new BatchItem(m)));
    }

    /// <summary>Prepares what was claimed; not broken off half way, so that nothing stays claimed.</summary>
    /// <param name="busy">Students to whom something is on its way.</param>
    public async Task Prepare(IReadOnlySet<StudentId> busy)
    {
        if (IsEmpty) return;
        var seen = busy.ToHashSet();
        var ahead = _items.Select(i => i.Message).Where(m => m.StudentId is not { } student || seen.Add(student)).ToList();
        var prepared = (await claimed.Prepare(ahead, new Sending(Guid.Empty, _owner, clock.GetCurrentInstant()), CancellationToken.None)).ToDictionary(i => i.Message.Id);
        _items = new(_items.Select(i => prepared.GetValueOrDefault(i.Message.Id) ?? i));
    }

    /// <summary>Keeps the links of what was prepared, before anything of it is handed over.</summary>
    public Task Keep() => IsEmpty ? Task.CompletedTask : claimed.Keep(CancellationToken.None);

    /// <summary>Hands over what is wanted; ends early when the program stops, the server is down or the rate is reached.</summary>
    public async Task<SweepResult> Deliver(CancellationToken stop)
    {
        var result = SweepResult.Nothing;
        await db.Database.OpenConnectionAsync(CancellationToken.None);
        while (!stop.IsCancellationRequested && !result.EndsEarly && _items.TryPeek(out var item))
        {
            result = result.With(item.Over ?? await Send(item, stop));
            _items.Dequeue();
        }

        return result;
    }

    /// <summary>What was not handed over is free again, and its links open nothing.</summary>
    public async Task PutBack()
    {
        var left = _items.Where(i => i.Over is null).ToList();
        _items.Clear();
        if (left.Count == 0) return;
        await outbox.GiveBack([.. left.Select(i => i.Message.Id)], _owner, CancellationToken.None);
        await dispatch.Forget([.. left.SelectMany(i => i.Mail?.Links ?? [])]);
    }

    // Stopping takes effect between two messages and while connecting: one that is begun is brought to its end.
    private async Task<SendingResult> Send(BatchItem item, CancellationToken stop)
    {
        var now = clock.GetCurrentInstant();
        if (now + _times.NeededToSend > _leaseUntil) await outbox.Renew(_owner, _leaseUntil = now + _times.Lease, CancellationToken.None);
        var sending = new Sending(item.Message.Id, _owner, now);
        if (item.Waits)
        {
            item = (await claimed.Prepare([item.Message], sending, CancellationToken.None))[0];
            await claimed.Keep(CancellationToken.None);
        }

        return item.Over ?? await dispatch.HandOver(item.Mail!, sending, stop);
    }
}
