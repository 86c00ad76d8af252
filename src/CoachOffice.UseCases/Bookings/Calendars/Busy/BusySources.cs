using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>The calendars a coach brought.</summary>
/// <param name="Zone">The practice's zone, for showing times.</param>
/// <param name="Rows">By name.</param>
public sealed record BusySources(DateTimeZone Zone, IReadOnlyList<BusySource> Rows);
