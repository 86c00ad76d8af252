namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>What would be kept of a file.</summary>
/// <param name="File">Its times.</param>
/// <param name="BookedWithin">Lessons already booked in them: they stay, and a person decides.</param>
public sealed record BusyPreview(BusyFile File, int BookedWithin);
