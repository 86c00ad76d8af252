using CoachOffice.Domain.Access;

namespace CoachOffice.Domain.Bookings;

/// <summary>Who teaches where.</summary>
public sealed record BookingWhere(AccountId CoachId, PlaceId PlaceId, ResourceId? ResourceId);
