using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>What came of a row of lessons.</summary>
/// <param name="Bookings">Those booked, first to last.</param>
/// <param name="Skipped">Starts that were taken and left out.</param>
public sealed record SeriesBooked(IReadOnlyList<BookingId> Bookings, IReadOnlyList<LocalDateTime> Skipped);
