namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>Why an event takes no time.</summary>
internal enum SkipReason
{
    Free,
    Cancelled,
    Over,
    NoLength,
    TooOften,
    UnknownZone,
    Unreadable,
}
