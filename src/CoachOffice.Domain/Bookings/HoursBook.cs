namespace CoachOffice.Domain.Bookings;

/// <summary>Everything that says when coaches are at work.</summary>
/// <param name="Weekly">Hours of every week, of one or more coaches.</param>
/// <param name="Exceptions">Closed and opened times, of coaches and of the whole practice.</param>
public sealed record HoursBook(IReadOnlyList<WeeklyHours> Weekly, IReadOnlyList<HoursException> Exceptions);
