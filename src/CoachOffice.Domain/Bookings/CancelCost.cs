using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>What cancelling one seat costs at a moment, by the practice's terms. Said before it happens, and then done.</summary>
/// <param name="IsLate">The notice is over.</param>
/// <param name="FeeMinor">Owed, in the smallest unit of the practice's currency; 0 when nothing is.</param>
/// <param name="TakesCredit">The reserved credit is used up instead of a fee.</param>
/// <param name="FreeUntil">Last moment it costs nothing.</param>
public sealed record CancelCost(bool IsLate, long FeeMinor, bool TakesCredit, Instant FreeUntil)
{
    /// <summary>The practice cancels, or nothing is owed for another reason.</summary>
    public static CancelCost Nothing { get; } = new(false, 0, false, default);

    /// <summary>Of cancelling.</summary>
    public static CancelCost Of(BookingTerms terms, Booking booking, Seat seat, Instant now)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        var freeUntil = booking.Starts - Duration.FromHours(terms.NoticeHours);
        if (seat.Status == SeatStatus.Held || !terms.IsLate(booking.Starts, now)) return new CancelCost(false, 0, false, freeUntil);
        return Share(seat, terms.LateFeePercent, terms.LateTakesCredit) with { IsLate = true, FreeUntil = freeUntil };
    }

    /// <summary>Of cancelling once the notice is over, whenever that is; said before a seat is booked.</summary>
    public static CancelCost AfterNotice(BookingTerms terms, Booking booking, Seat seat)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        return Share(seat, terms.LateFeePercent, terms.LateTakesCredit) with { IsLate = true, FreeUntil = booking.Starts - Duration.FromHours(terms.NoticeHours) };
    }

    /// <summary>Of not coming.</summary>
    public static CancelCost OfNoShow(BookingTerms terms, Booking booking, Seat seat)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(booking);
        ArgumentNullException.ThrowIfNull(seat);
        return Share(seat, terms.NoShowFeePercent, terms.LateTakesCredit) with { IsLate = true, FreeUntil = booking.Starts - Duration.FromHours(terms.NoticeHours) };
    }

    // Half a cent is rounded up, as in the most usual of the written rules.
    private static CancelCost Share(Seat seat, int percent, bool takesCredit)
    {
        if (percent == 0) return new CancelCost(true, 0, false, default);
        return seat.PackageId is not null && takesCredit
            ? new CancelCost(true, 0, true, default)
            : new CancelCost(true, ((seat.PriceMinor * percent) + 50) / 100, false, default);
    }
}
