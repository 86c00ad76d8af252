namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>What a calendar holds.</summary>
/// <param name="Name">As programs list it.</param>
/// <param name="Entries">By start.</param>
public sealed record FoundEntries(string Name, IReadOnlyList<CalendarEntry> Entries);
