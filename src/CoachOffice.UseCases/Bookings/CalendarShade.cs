using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>A time at which a coach, or everybody, is not there.</summary>
/// <param name="Coach">Null: the whole practice.</param>
/// <param name="Time">Half-open.</param>
/// <param name="Why">Such as "closed" or the name of a calendar.</param>
public sealed record CalendarShade(AccountId? Coach, Interval Time, string Why);
