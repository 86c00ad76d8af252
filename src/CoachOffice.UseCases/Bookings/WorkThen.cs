namespace CoachOffice.UseCases.Bookings;

/// <summary>Whether a coach is at work at a time.</summary>
public enum WorkThen
{
    /// <summary>At work there, all of the time.</summary>
    Here,

    /// <summary>At work at another place for some or all of it.</summary>
    Elsewhere,

    /// <summary>Some or all of it lies outside the hours, or is closed.</summary>
    Off,
}
