using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Web.Shell;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>Addresses within the calendar.</summary>
internal static class CalendarLinks
{
    public const string Calendar = "/calendar";

    public static string To(BookingId booking) => $"/bookings/{booking.Value}";

    /// <summary>A view of some days; "all" names every coach.</summary>
    public static string Of(LocalDate day, string view, AccountId? coach) => $"{Calendar}?day={DayWords.Iso(day)}&view={view}&coach={(coach is { } one ? one.Value.ToString() : "all")}";

    /// <summary>A new booking at a time.</summary>
    public static string New(LocalDate day, AccountId? coach) => $"/bookings/new?day={DayWords.Iso(day)}{(coach is { } one ? $"&coach={one.Value}" : "")}";
}
