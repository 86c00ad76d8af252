namespace CoachOffice.Domain.Bookings;

/// <summary>Where somebody on the waiting list stands.</summary>
public enum WaitingStatus
{
    Waiting,
    Offered,
    Taken,

    /// <summary>An offer ran out.</summary>
    Passed,

    /// <summary>Does not wait any more, or the days are over.</summary>
    Left,
}
