using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Which days of whom.</summary>
/// <param name="First">First day, in the practice's zone.</param>
/// <param name="Days">How many.</param>
/// <param name="Coach">One coach, or null for all.</param>
public sealed record CalendarWish(LocalDate First, int Days, AccountId? Coach);
