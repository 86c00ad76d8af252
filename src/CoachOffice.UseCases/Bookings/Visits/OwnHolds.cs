using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>A student keeps one time at once: choosing another lets the former go, so that nobody blocks a day by looking. Offers of the waiting list stay.</summary>
public sealed class OwnHolds(OfficeDb db, BookingDoor door, ReleaseSeat release)
{
    /// <summary>Lets go what the student chose before and did not confirm.</summary>
    internal async Task LetGo(StudentId student, CancellationToken stop)
    {
        var held = await db.Seats.AsNoTracking()
            .Where(s => s.StudentId == student && s.HeldUntil != null && s.Status == SeatStatus.Held && !db.WaitingPlaces.Any(w => w.OfferedSeat == s.Id && w.Status == WaitingStatus.Offered))
            .Select(s => new { s.Id, s.BookingId }).ToListAsync(stop);
        foreach (var seat in held)
        {
            await door.Change(new BookingDeed(seat.BookingId, null, Actor.Student, "hold-let-go"), b => release.Release(b, seat.Id, CancelReason.ByStudent, (Actor.Student, door.Now), stop), stop);
            db.ChangeTracker.Clear();
        }
    }
}
