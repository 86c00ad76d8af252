namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>What came of ending hours.</summary>
/// <param name="Before">As they were, for an undo.</param>
/// <param name="IsGone">True when they had not begun and were taken out.</param>
/// <param name="NowOutside">How many booked lessons lie outside the hours since then.</param>
public sealed record HoursEnded(HoursForm Before, bool IsGone, int NowOutside);
