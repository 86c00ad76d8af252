using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>A coach's hours.</summary>
/// <param name="Weekly">Those that hold today or later, by weekday.</param>
/// <param name="Exceptions">Closed and opened times that are not over, the practice's too.</param>
/// <param name="Outside">What is booked outside of them.</param>
public sealed record HoursView(IReadOnlyList<WeeklyHours> Weekly, IReadOnlyList<HoursException> Exceptions, IReadOnlyList<OutsideBooking> Outside);
