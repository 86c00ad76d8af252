using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>What a student may do with a lesson of their own.</summary>
internal static class VisitRules
{
    /// <summary>Moved is what one student alone comes to, while cancelling it would cost nothing.</summary>
    public static bool MayMove(Booking booking, StudentId student, BookingTerms terms, Instant now) =>
        booking.Status == BookingStatus.Confirmed && !terms.IsLate(booking.Starts, now) && booking.Starts > now
        && booking.Seats.Where(s => s.Counts).ToList() is [{ Status: SeatStatus.Booked } only] && only.StudentId == student;
}
