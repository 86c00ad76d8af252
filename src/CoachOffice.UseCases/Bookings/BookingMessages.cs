using System.Security.Cryptography;
using System.Text;
using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.FollowUps;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>
/// Says what is due to students when bookings are made, moved and cancelled, in the transaction of the deed; nothing is saved here. Mail waits two
/// minutes, so that a slip taken back at once reaches nobody, and goes by night too: it answers what was done just now.
/// </summary>
public sealed class BookingMessages(OfficeDb db, OfficeMessages office, LessonReminders reminders, PracticeClock clock)
{
    private static readonly Duration Breath = Duration.FromMinutes(2);

    /// <summary>A student has a seat for sure: booked at once, confirmed after being held, or given back after a cancellation was taken back.</summary>
    public async Task Booked(Booking booking, Seat seat, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        var subject = booking.Id.Value;
        var untold = await End(subject, seat.StudentId, MessageKind.BookingCancelled, stop);
        await End(subject, seat.StudentId, MessageKind.WaitingOffer, stop);

        // Who was never told that it was cancelled needs not be told that it is on again.
        if (untold == 0) await Invite(booking, seat, stop);
        await reminders.For(booking, seat, stop);
    }

    /// <summary>A row of bookings was made: each student in it gets one letter for the whole row.</summary>
    public async Task SeriesBooked(IReadOnlyList<Booking> bookings, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(bookings);
        foreach (var student in bookings.SelectMany(b => b.Seats).Where(s => s.Counts).Select(s => s.StudentId).Distinct()) await WriteSeries(MessageKind.BookingInvitation, bookings, student, stop);
        await reminders.ForAll(bookings, stop);
    }

    /// <summary>Another time, coach or place for one booking: everybody in it is told.</summary>
    public async Task Moved(Booking booking, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(booking);
        foreach (var seat in booking.Seats.Where(s => s.Status == SeatStatus.Booked))
        {
            await End(booking.Id.Value, seat.StudentId, MessageKind.BookingInvitation, stop);
            await Invite(booking, seat, stop);
            await reminders.End(booking, seat.StudentId, stop);
            await reminders.For(booking, seat, stop);
        }
    }

    /// <summary>A student's seat is given up, alone or because the whole booking was cancelled. Not for seats that were only held.</summary>
    public async Task Cancelled(Booking booking, Seat seat, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        await End(booking.Id.Value, seat.StudentId, MessageKind.WaitingOffer, stop);
        await reminders.End(booking, seat.StudentId, stop);
        var (told, waits) = await Told(booking, seat.StudentId, stop);
        await End(booking.Id.Value, seat.StudentId, MessageKind.BookingInvitation, stop);

        // Who was not written to yet is left in peace; a letter about the whole row that still waits will be right by itself.
        if (told || !waits) await Write(MessageKind.BookingCancelled, booking, seat, stop);
    }

    /// <summary>Several bookings of a row were cancelled at once: who was told of the row gets one letter in place of one for each. Called after <see cref="Cancelled"/>, before saving.</summary>
    public async Task SeriesCancelled(IReadOnlyList<Booking> bookings, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(bookings);
        var subjects = bookings.Select(b => b.Id.Value).ToHashSet();
        var single = db.Messages.Local.Where(m => m.Kind == MessageKind.BookingCancelled && m.SubjectId is { } about && subjects.Contains(about)).ToList();
        foreach (var letters in single.GroupBy(m => m.StudentId!.Value).Where(g => g.Count() > 1))
        {
            if (!await WasTold([SeriesOf(bookings)], letters.Key, stop)) continue;
            db.Messages.RemoveRange(letters);
            await WriteSeries(MessageKind.BookingCancelled, bookings, letters.Key, stop);
        }
    }

    /// <summary>A freed seat is kept for who waits; the letter names until when and goes at once.</summary>
    public Task Offered(WaitingPlace waiting, Booking booking, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(waiting);
        ArgumentNullException.ThrowIfNull(booking);
        return office.Write(Due(MessageKind.WaitingOffer, waiting.StudentId, booking.Id.Value, $"{waiting.OfferedSeat?.Value:N}") with { DueAt = clock.Now }, stop);
    }

    private Task Invite(Booking booking, Seat seat, CancellationToken stop) => Write(MessageKind.BookingInvitation, booking, seat, stop);

    private Task Write(MessageKind kind, Booking booking, Seat seat, CancellationToken stop) =>
        office.Write(Due(kind, seat.StudentId, booking.Id.Value, $"{seat.Id.Value:N}.{booking.Sequence}"), stop);

    private Task WriteSeries(MessageKind kind, IReadOnlyList<Booking> bookings, StudentId student, CancellationToken stop) =>
        office.Write(Due(kind, student, SeriesOf(bookings), Fingerprint(bookings)), stop);

    private DueMessage Due(MessageKind kind, StudentId student, Guid subject, string occasion) => new()
    {
        Kind = kind,
        StudentId = student,
        SubjectId = subject,
        DueAt = clock.Now + Breath,
        AtOnce = true,
        Reason = kind switch { MessageKind.BookingCancelled => "a lesson was cancelled", MessageKind.WaitingOffer => "a place became free for somebody who waits", _ => "a lesson was booked or moved" },
        Occasion = occasion,
    };

    private Task<int> End(Guid subject, StudentId student, MessageKind kind, CancellationToken stop) =>
        office.EndAbout((subject, student), [kind], "superseded", stop);

    private async Task<(bool Told, bool Waits)> Told(Booking booking, StudentId student, CancellationToken stop)
    {
        Guid[] subjects = booking.SeriesId is { } series ? [booking.Id.Value, series.Value] : [booking.Id.Value];
        var waits = await Invitations(subjects, student).AnyAsync(m => m.State == MessageState.Waiting && m.LeaseUntil == null, stop);
        return (await WasTold(subjects, student, stop), waits);
    }

    // A letter that is on its way, went, or could not go is something the person may know of or has to be told otherwise.
    private Task<bool> WasTold(Guid[] subjects, StudentId student, CancellationToken stop) => Invitations(subjects, student)
        .AnyAsync(m => m.State == MessageState.Sent || m.State == MessageState.NeedsAttention || m.State == MessageState.Unknown || m.LeaseUntil != null || m.LastProblem == BookingProblems.NoMail, stop);

    private IQueryable<Message> Invitations(Guid[] subjects, StudentId student) =>
        db.Messages.Where(m => m.StudentId == student && m.SubjectId != null && subjects.Contains(m.SubjectId.Value) && m.Kind == MessageKind.BookingInvitation);

    // Which bookings in which revision: the same deed twice is one letter, any other another.
    private static string Fingerprint(IReadOnlyList<Booking> bookings) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Join(' ', bookings.Select(b => $"{b.Id.Value:N}.{b.Sequence}")))))[..32];

    private static Guid SeriesOf(IReadOnlyList<Booking> bookings) => bookings[0].SeriesId!.Value.Value;
}
