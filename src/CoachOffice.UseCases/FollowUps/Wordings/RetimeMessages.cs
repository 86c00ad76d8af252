using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Bookings;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>What waits of a kind follows a changed rule, in the transaction of the change. What is being sent at the moment goes as it was.</summary>
public sealed class RetimeMessages(OfficeDb db, LessonReminders reminders, PracticeClock clock)
{
    /// <summary>Nothing of the kind is sent any more.</summary>
    public Task TurnOff(MessageKind kind, CancellationToken stop) => Skip(Open(kind), "kind-off", stop);

    /// <summary>What waits for its time waits for a coach now, or the other way round.</summary>
    public Task Wait(MessageKind kind, bool forCoach, CancellationToken stop)
    {
        var (from, to) = forCoach ? (MessageState.Waiting, MessageState.AwaitsApproval) : (MessageState.AwaitsApproval, MessageState.Waiting);
        return Open(kind).Where(m => m.State == from).ExecuteUpdateAsync(m => m.SetProperty(x => x.State, to), stop);
    }

    /// <summary>Reminders move with the new hours; what the clock writes it writes anew.</summary>
    public async Task Retime(MessageRule rule, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(rule);
        if (rule.Kind == MessageKind.LessonReminder) await Reminders(rule, stop);
        else if (rule.Kind is MessageKind.WeeklyCheckIn or MessageKind.MorningList) await Open(rule.Kind).ExecuteDeleteAsync(stop);
        else if (rule.Kind is MessageKind.PackageEnding or MessageKind.PaymentDue or MessageKind.ReviewLate) await Open(rule.Kind).Where(m => m.DueAt > clock.Now).ExecuteDeleteAsync(stop);
    }

    private async Task Reminders(MessageRule rule, CancellationToken stop)
    {
        var waiting = await Open(rule.Kind).Select(m => new { m.Id, m.SubjectId }).ToListAsync(stop);
        var bookings = waiting.Select(m => BookingId.From(m.SubjectId!.Value)).Distinct().ToList();
        var starts = new Dictionary<Guid, Instant>();
        foreach (var some in bookings.Chunk(400)) foreach (var booking in await db.Bookings.Where(b => some.Contains(b.Id)).Select(b => new { b.Id, b.Starts }).ToListAsync(stop)) starts[booking.Id.Value] = booking.Starts;
        foreach (var group in waiting.Where(m => starts.ContainsKey(m.SubjectId!.Value)).GroupBy(m => starts[m.SubjectId!.Value]))
        {
            var due = await reminders.When(group.Key, rule.Timing, stop) ?? clock.Now;
            var ids = group.Select(m => m.Id).ToList();
            await db.Messages.Where(m => ids.Contains(m.Id)).ExecuteUpdateAsync(m => m.SetProperty(x => x.DueAt, due), stop);
        }
    }

    private IQueryable<Message> Open(MessageKind kind)
    {
        var now = clock.Now;
        return db.Messages.Where(m => m.Kind == kind && (m.State == MessageState.Waiting || m.State == MessageState.AwaitsApproval || m.State == MessageState.Held) && (m.LeaseUntil == null || m.LeaseUntil <= now));
    }

    private static Task<int> Skip(IQueryable<Message> messages, string why, CancellationToken stop) =>
        messages.ExecuteUpdateAsync(m => m.SetProperty(x => x.State, MessageState.Skipped).SetProperty(x => x.LastProblem, why), stop);
}
