using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>What a student waits for.</summary>
public sealed record WaitingWish(OfferingId OfferingId, AccountId? CoachId, BookingId? BookingId, LocalDate FirstDay, LocalDate LastDay);
