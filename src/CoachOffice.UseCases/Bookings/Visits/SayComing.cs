using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>A student says "I am coming": noted on the seat, for the coach. The reminder that still waits is not needed any more.</summary>
public sealed class SayComing(BookingDoor door, OfficeMessages messages)
{
    /// <summary>The booking, or why not; saying it twice changes nothing.</summary>
    public Task<Outcome<BookingId>> To(BookingId id, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        return door.Change(new BookingDeed(id, null, Actor.Student, "visit-coming"), booking => Note(booking, pass, stop), stop);
    }

    private async Task<Refusal?> Note(Booking booking, VisitPass pass, CancellationToken stop)
    {
        if (booking.Seats.LastOrDefault(s => s.StudentId == pass.StudentId && s.Status == SeatStatus.Booked) is not { } seat || !booking.IsOn) return VisitRefusals.NotFound;
        if (booking.Starts <= door.Now) return VisitRefusals.Begun;
        seat.SayComing(door.Now);
        await messages.EndAbout((booking.Id.Value, pass.StudentId), [MessageKind.LessonReminder], "answered", stop);
        return null;
    }
}
