using System.Globalization;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Ledger;
using NodaTime;
using NodaTime.Text;

namespace CoachOffice.UseCases.Bookings.Mail;

/// <summary>Times, prices and terms of bookings in sentences. Pure.</summary>
public static class BookingWords
{
    private static readonly LocalDatePattern Day = LocalDatePattern.Create("dddd d MMMM yyyy", CultureInfo.InvariantCulture);
    private static readonly LocalTimePattern Time = LocalTimePattern.CreateWithInvariantCulture("HH:mm");

    /// <summary>Day, from and to, and whose clock: <c>Sunday 11 October 2026, 09:00 to 10:00 (Europe/London)</c>.</summary>
    public static string When(Booking booking)
    {
        ArgumentNullException.ThrowIfNull(booking);
        var zone = DateTimeZoneProviders.Tzdb[booking.Zone];
        var (from, to) = (booking.Starts.InZone(zone), booking.Ends.InZone(zone));
        return $"{Day.Format(from.Date)}, {Time.Format(from.TimeOfDay)} to {Time.Format(to.TimeOfDay)} ({Named(booking.Zone)})";
    }

    /// <summary>A moment on a zone's clock.</summary>
    public static string Moment(Instant moment, string zone)
    {
        var there = moment.InZone(DateTimeZoneProviders.Tzdb[zone]);
        return $"{Day.Format(there.Date)}, {Time.Format(there.TimeOfDay)} ({Named(zone)})";
    }

    /// <summary>What one lesson costs.</summary>
    public static string Price(Seat seat, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(seat);
        if (seat.PackageId is not null) return "One lesson of the package";
        return seat.PriceMinor == 0 ? "" : new Money(seat.PriceMinor, currency).ToString();
    }

    /// <summary>Until when cancelling is free, and what it costs afterwards.</summary>
    public static string Terms(BookingTerms terms, Booking booking, Seat seat, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(booking);
        var late = CancelCost.Of(terms, booking, seat, booking.Starts);
        var free = $"Cancelling or moving is free until {Moment(late.FreeUntil, booking.Zone)}";
        return $"{free}; {(Owed(late, currency) is { } cost ? $"after that {cost}." : "after that it is free too.")}";
    }

    /// <summary>What a cancellation came to.</summary>
    public static string Outcome(BookingTerms terms, Booking booking, Seat seat, Currency currency)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        var cost = seat.Status == SeatStatus.CancelledLate ? Owed(CancelCost.Of(terms, booking, seat, booking.Starts), currency) : null;
        return cost is null ? "Nothing is owed for it." : $"The notice of {Hours(terms.NoticeHours)} was over, so {cost}.";
    }

    private static string? Owed(CancelCost cost, Currency currency)
    {
        if (cost.TakesCredit) return "one lesson of the package counts as used";
        return cost.FeeMinor == 0 ? null : $"{new Money(cost.FeeMinor, currency)} is owed";
    }

    private static string Hours(int hours) => hours == 1 ? "one hour" : $"{hours} hours";

    private static string Named(string zone) => zone.Replace('_', ' ');
}
