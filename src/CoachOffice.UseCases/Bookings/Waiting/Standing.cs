using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Waiting;

/// <summary>How a booking stood before a change, to see afterwards what became free.</summary>
/// <param name="IsOn">It took time.</param>
/// <param name="FreeSeats">Seats nobody had.</param>
/// <param name="Coach">Whose time it took.</param>
/// <param name="Time">From the start to the end of the lesson.</param>
public sealed record Standing(bool IsOn, int FreeSeats, AccountId Coach, Interval Time)
{
    /// <summary>As it stands now.</summary>
    public static Standing Of(Booking booking)
    {
        ArgumentNullException.ThrowIfNull(booking);
        return new(booking.IsOn, booking.FreeSeats, booking.CoachId, new Interval(booking.Starts, booking.Ends));
    }
}
