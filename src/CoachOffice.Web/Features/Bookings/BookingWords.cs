using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>Bookings in words.</summary>
internal static class BookingWords
{
    public static string Of(OfferingKind kind) => kind switch
    {
        OfferingKind.Private => "Private",
        OfferingKind.Pair => "Pair",
        OfferingKind.Group => "Group",
        OfferingKind.Junior => "Junior",
        OfferingKind.OnCourse => "On the course",
        _ => "Remote review",
    };

    public static string Of(SeatStatus status) => status switch
    {
        SeatStatus.Held => "kept, not confirmed",
        SeatStatus.Booked => "booked",
        SeatStatus.Attended => "came",
        SeatStatus.NoShow => "did not come",
        SeatStatus.Released => "cancelled in time",
        SeatStatus.CancelledLate => "cancelled late",
        _ => "kept, then lapsed",
    };

    /// <summary>A sign beside the word, so that nothing hangs on colour alone.</summary>
    public static string Sign(SeatStatus status) => status switch
    {
        SeatStatus.Attended => "✓",
        SeatStatus.NoShow => "✗",
        SeatStatus.Held => "…",
        _ => "",
    };

    /// <summary>Who comes: one or two names, or how many of how many.</summary>
    public static string Who(CalendarBooking booking) => booking.Seats.Count switch
    {
        0 => booking.Capacity > 2 ? $"nobody yet, room for {booking.Capacity}" : "nobody",
        1 or 2 when booking.Capacity <= 2 => string.Join(" and ", booking.Seats.Select(s => s.Name)),
        _ => $"{booking.Seats.Count} of {booking.Capacity}",
    };

    /// <summary>Such as 10:00–11:00.</summary>
    public static string When(Interval time, DateTimeZone zone) => $"{Clock(time.Start, zone)}–{Clock(time.End, zone)}";

    public static string Clock(LocalDateTime at) => at.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    public static string Clock(Instant at, DateTimeZone zone) => at.InZone(zone).LocalDateTime.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);
}
