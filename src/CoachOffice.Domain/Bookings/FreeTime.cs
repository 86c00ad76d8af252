using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A time that can be booked.</summary>
/// <param name="Coach">With whom.</param>
/// <param name="Place">Where.</param>
/// <param name="LocalStart">Wall clock at the place.</param>
/// <param name="Starts">The same as an instant.</param>
public sealed record FreeTime(AccountId Coach, PlaceId Place, LocalDateTime LocalStart, Instant Starts);
