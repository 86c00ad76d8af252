using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Keeps one reminder for each lesson a student has booked, in the transaction of what is done with the booking; nothing is saved here.</summary>
public sealed class LessonReminders(OfficeDb db, OfficeMessages office, ReadMessageRules rules, PracticeClock clock)
{
    /// <summary>Why a reminder ended that may be wanted again: the lesson moved, or was cancelled, which may be taken back.</summary>
    public const string Ended = "superseded";

    private static readonly Duration Least = Duration.FromHours(1);

    /// <summary>The student is to come. A reminder that would be due before now is not written: the invitation has just said the same.</summary>
    public async Task For(Booking booking, Seat seat, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        var rule = await rules.Of(MessageKind.LessonReminder, stop);
        if (!rule.IsOn || await Due(booking, seat, stop) is not { } due) return;
        var state = rule.WaitsForCoach ? MessageState.AwaitsApproval : MessageState.Waiting;
        var again = await db.Messages.Where(m => m.OnceKey == due.OnceKey && m.State == MessageState.Skipped && m.LastProblem == Ended)
            .ExecuteUpdateAsync(m => m.SetProperty(x => x.State, state).SetProperty(x => x.LastProblem, (string?)null).SetProperty(x => x.DueAt, due.DueAt), stop);
        if (again == 0) await office.Write(due, stop);
    }

    /// <summary>Lessons that are new, in one row.</summary>
    public async Task ForAll(IReadOnlyList<Booking> bookings, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(bookings);
        await office.WriteAll(await Due(bookings, stop), stop);
    }

    /// <summary>The reminders of lessons that come, whether or not they are written already.</summary>
    public async Task<IReadOnlyList<DueMessage>> Due(IReadOnlyList<Booking> bookings, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(bookings);
        var found = new List<DueMessage>();
        foreach (var (booking, seat) in bookings.SelectMany(b => b.Seats.Select(s => (b, s))))
        {
            if (await Due(booking, seat, stop) is { } due) found.Add(due);
        }

        return found;
    }

    /// <summary>The student is not to come any more, or at another time.</summary>
    public Task End(Booking booking, StudentId student, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(booking);
        return office.EndAbout((booking.Id.Value, student), [MessageKind.LessonReminder], Ended, stop);
    }

    /// <summary>When a lesson is spoken of: so many hours before, not by night, and in any case an hour before it begins; null when that is over.</summary>
    public async Task<Instant?> When(Instant starts, int hours, CancellationToken stop = default)
    {
        var at = new FollowUpDates(await clock.Zone(stop)).Reminder(starts, Duration.FromHours(hours), Least);
        return at > clock.Now ? at : null;
    }

    private async Task<DueMessage?> Due(Booking booking, Seat seat, CancellationToken stop)
    {
        var hours = (await rules.Of(MessageKind.LessonReminder, stop)).Timing;
        if (!booking.IsOn || seat.Status != SeatStatus.Booked || await When(booking.Starts, hours, stop) is not { } at) return null;
        return new DueMessage
        {
            Kind = MessageKind.LessonReminder,
            StudentId = seat.StudentId,
            SubjectId = booking.Id.Value,
            DueAt = at,
            Reason = $"a lesson is booked, and {hours} hours before it the student is reminded",
            Occasion = $"{seat.Id.Value:N}.{booking.Sequence}",
        };
    }
}
