namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>Events of a file that take no time here.</summary>
/// <param name="Why">Which and why, in words.</param>
/// <param name="Count">How many.</param>
public sealed record BusySkip(string Why, int Count);
