using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A time at which a coach is not free, buffer included.</summary>
/// <param name="Coach">Who.</param>
/// <param name="Place">Where; null when only a calendar of the coach's own says so: no way there is reckoned.</param>
/// <param name="Time">Half-open.</param>
public sealed record CoachTaken(AccountId Coach, PlaceId? Place, Interval Time);
