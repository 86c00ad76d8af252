using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings;

/// <summary>A change of one booking: which, as whom it was shown, by whom.</summary>
/// <param name="Booking">Which.</param>
/// <param name="Version">The version the page was made from; null: whatever it is now.</param>
/// <param name="Actor">Who does it.</param>
/// <param name="Action">For the audit row, e.g. <c>booking-moved</c>.</param>
public sealed record BookingDeed(BookingId Booking, int? Version, Actor Actor, string Action);
