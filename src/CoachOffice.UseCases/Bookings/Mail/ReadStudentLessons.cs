using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Bookings.Calendars;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Mail;

/// <summary>Reads what a message about bookings speaks of.</summary>
public sealed class ReadStudentLessons(OfficeDb db, ReadLessons lessons)
{
    /// <summary>As it stands now; null when it speaks of nothing any more.</summary>
    public async Task<StudentLessons?> For(Message message, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        if (message is not { StudentId: { } student, SubjectId: { } subject }) return null;
        var series = SeriesId.From(subject);
        var row = await db.BookingSeries.AsNoTracking().SingleOrDefaultAsync(s => s.Id == series, stop);
        var booking = BookingId.From(subject);
        var asked = row is null ? db.Bookings.Where(b => b.Id == booking) : db.Bookings.Where(b => b.SeriesId == series);
        var found = await lessons.Of(asked.Where(b => b.Seats.Any(s => s.StudentId == student)), stop);
        if (found.Count == 0) return null;
        var own = row ?? await RowOf(message, found[0].Booking, stop);
        return new StudentLessons(student, own, row is not null, found);
    }

    /// <summary>A letter about the subject went out before.</summary>
    public Task<bool> WasTold(Message message, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(message);
        return db.Messages.AnyAsync(m => m.Id != message.Id && m.SubjectId == message.SubjectId && m.StudentId == message.StudentId && m.Kind == MessageKind.BookingInvitation && m.State == MessageState.Sent, stop);
    }

    // One of a row is told as such only to who was told of the row; a guest of one day knows no row.
    private async Task<BookingSeries?> RowOf(Message message, Booking booking, CancellationToken stop)
    {
        if (booking.SeriesId is not { } id) return null;
        var told = await db.Messages.AnyAsync(m => m.SubjectId == id.Value && m.StudentId == message.StudentId && m.Kind == MessageKind.BookingInvitation && m.State != MessageState.Skipped, stop);
        return told ? await db.BookingSeries.AsNoTracking().SingleAsync(s => s.Id == id, stop) : null;
    }
}
