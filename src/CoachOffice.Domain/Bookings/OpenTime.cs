using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A time at which a coach is at work at a place, half-open.</summary>
public sealed record OpenTime(AccountId Coach, PlaceId Place, Interval Time);
