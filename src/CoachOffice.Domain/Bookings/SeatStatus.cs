namespace CoachOffice.Domain.Bookings;

/// <summary>Life of one student's part in a booking.</summary>
public enum SeatStatus
{
    /// <summary>Kept free until a time.</summary>
    Held,

    Booked,

    Attended,

    /// <summary>Did not come and did not cancel.</summary>
    NoShow,

    /// <summary>Cancelled within the terms, or by the practice: nothing is owed.</summary>
    Released,

    /// <summary>Cancelled later than the terms allow.</summary>
    CancelledLate,

    /// <summary>Held, and not confirmed in time.</summary>
    Lapsed,
}
