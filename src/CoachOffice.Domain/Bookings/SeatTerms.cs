using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>What is agreed about a seat.</summary>
/// <param name="PriceMinor">In the smallest unit of the practice's currency.</param>
/// <param name="TaxBasisPoints">In hundredths of a percent.</param>
/// <param name="HeldUntil">Null: booked at once.</param>
public sealed record SeatTerms(long PriceMinor, int TaxBasisPoints, Instant? HeldUntil = null)
{
    /// <summary>As the offering says today.</summary>
    public static SeatTerms Of(Offering offering, Instant? heldUntil = null)
    {
        ArgumentNullException.ThrowIfNull(offering);
        return new(offering.PriceMinor, offering.TaxBasisPoints, heldUntil);
    }
}
