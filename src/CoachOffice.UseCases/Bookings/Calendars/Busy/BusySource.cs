using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>A calendar somebody brought.</summary>
/// <param name="Name">As they call it.</param>
/// <param name="Count">Busy times kept.</param>
/// <param name="First">Start of the first.</param>
/// <param name="Last">End of the last.</param>
public sealed record BusySource(string Name, int Count, Instant First, Instant Last);
