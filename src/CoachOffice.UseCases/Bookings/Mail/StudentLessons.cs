using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings.Calendars;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Mail;

/// <summary>What a message about bookings speaks of, as it stands now: one booking, or a row of them, with the student's last seat in each.</summary>
/// <param name="Student">Whose.</param>
/// <param name="Series">The row the message speaks of or the booking belongs to; null without one.</param>
/// <param name="IsRow">It speaks of the whole row.</param>
/// <param name="Lessons">By start; at least one.</param>
public sealed record StudentLessons(StudentId Student, BookingSeries? Series, bool IsRow, IReadOnlyList<LessonFacts> Lessons)
{
    /// <summary>Those the student is to come to and that are not over.</summary>
    public IReadOnlyList<LessonFacts> On(Instant now) => [.. Lessons.Where(l => l.Booking.Ends > now && l.Booking.IsOn && SeatIn(l).Status == SeatStatus.Booked)];

    /// <summary>Those given up that would not be over.</summary>
    public IReadOnlyList<LessonFacts> Off(Instant now) => [.. Lessons.Where(l => l.Booking.Ends > now && SeatIn(l).Status is SeatStatus.Released or SeatStatus.CancelledLate)];

    /// <summary>The student's last seat in a booking; earlier ones were given up.</summary>
    public Seat SeatIn(LessonFacts lesson) => SeatsIn(lesson)[^1];

    /// <summary>
    /// Revision of what the student is told about a booking: the booking's own, raised by two for each time the student left and came back, and by one for
    /// leaving a booking that goes on. It thus only ever grows, as RFC 5546 2.1.4 asks, though a group's revision stays when one of it leaves.
    /// </summary>
    public int SequenceOf(LessonFacts lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        var returns = 2 * (SeatsIn(lesson).Count - 1);
        return lesson.Booking.Sequence + returns + (lesson.Booking.IsOn && !SeatIn(lesson).Counts ? 1 : 0);
    }

    private List<Seat> SeatsIn(LessonFacts lesson) => [.. lesson.Booking.Seats.Where(s => s.StudentId == Student).OrderBy(s => s.BookedAt).ThenBy(s => s.Id.Value)];
}
