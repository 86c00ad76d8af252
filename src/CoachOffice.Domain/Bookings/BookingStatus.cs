namespace CoachOffice.Domain.Bookings;

/// <summary>Life of a booking.</summary>
public enum BookingStatus
{
    /// <summary>Kept free for somebody until a time; then it lapses.</summary>
    Held,

    Confirmed,

    Cancelled,

    /// <summary>Held, and nobody confirmed in time.</summary>
    Lapsed,
}
