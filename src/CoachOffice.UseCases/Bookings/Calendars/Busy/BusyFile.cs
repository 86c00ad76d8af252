using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>What a calendar's file comes to: times only, nothing of what they are for.</summary>
/// <param name="Times">Apart from each other, by start.</param>
/// <param name="Events">How many events they come from; a row counts once.</param>
/// <param name="Skipped">What was left out, and why.</param>
public sealed record BusyFile(IReadOnlyList<Interval> Times, int Events, IReadOnlyList<BusySkip> Skipped);
