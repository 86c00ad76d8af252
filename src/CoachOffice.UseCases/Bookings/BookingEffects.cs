using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Ledger;

namespace CoachOffice.UseCases.Bookings;

/// <summary>What a deed on a booking means for money and for mail, written into the deed's own transaction. Called once the booking has its new state.</summary>
public sealed class BookingEffects(SeatMoney money, BookingMessages messages)
{
    /// <summary>A seat is booked or held: a credit is reserved where there is one.</summary>
    public Task Seated(Booking booking, Seat seat, CancellationToken stop) => money.Booked(booking, seat, stop);

    /// <summary>A freed seat is kept for who waits: a credit is reserved, and the person is told until when.</summary>
    public async Task Offered(WaitingPlace waiting, Booking booking, Seat seat, CancellationToken stop)
    {
        await money.Booked(booking, seat, stop);
        await messages.Offered(waiting, booking, stop);
    }

    /// <summary>A seat is booked for sure: the student is told.</summary>
    public Task Told(Booking booking, Seat seat, CancellationToken stop) => messages.Booked(booking, seat, stop);

    /// <summary>A row of bookings was made: each student is told once.</summary>
    public Task ToldAll(IReadOnlyList<Booking> bookings, CancellationToken stop) => messages.SeriesBooked(bookings, stop);

    /// <summary>Another time, coach or place.</summary>
    public async Task Moved(Booking booking, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(booking);
        foreach (var seat in booking.Seats.Where(s => s.IsOpen)) await money.Moved(booking, seat, stop);
        await messages.Moved(booking, stop);
    }

    /// <summary>A seat was given up; who only had it held is not written to.</summary>
    public async Task Released(Booking booking, Seat seat, SeatEnd end, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(end);
        await money.Released(booking, seat, end.Cost, end.Actor, stop);
        if (!end.WasHeld) await messages.Cancelled(booking, seat, stop);
    }

    /// <summary>Several bookings of a row were cancelled at once: students are told once.</summary>
    public Task RestCancelled(IReadOnlyList<Booking> bookings, CancellationToken stop) => messages.SeriesCancelled(bookings, stop);

    /// <summary>A cancelled seat is booked again.</summary>
    public async Task TakenBack(Booking booking, Seat seat, Actor actor, CancellationToken stop)
    {
        await money.Undone(booking, seat, actor, stop);
        await messages.Booked(booking, seat, stop);
    }

    /// <summary>The student came, did not, or the mark was taken back.</summary>
    public Task Marked(Booking booking, Seat seat, SeatEnd end, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(seat);
        ArgumentNullException.ThrowIfNull(end);
        return seat.Status switch
        {
            SeatStatus.Attended => money.Attended(booking, seat, end.Actor, stop),
            SeatStatus.NoShow => money.NoShow(booking, seat, end.Cost, end.Actor, stop),
            _ => money.Undone(booking, seat, end.Actor, stop),
        };
    }
}
