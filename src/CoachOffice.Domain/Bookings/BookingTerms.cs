using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>What the practice has decided about booking and cancelling: one row.</summary>
public sealed class BookingTerms
{
    /// <summary>Identity of the one row there is.</summary>
    public static readonly Guid Only = new(1, 0, 0, [0, 0, 0, 0, 0, 0, 0, 0]);

    private BookingTerms()
    {
    }

    public Guid Id { get; private set; }

    /// <summary>Up to so many hours before the start a lesson is cancelled or moved without cost.</summary>
    public int NoticeHours { get; private set; } = 24;

    /// <summary>Share of the price owed after a late cancellation, in percent.</summary>
    public int LateFeePercent { get; private set; } = 50;

    /// <summary>Share of the price owed when nobody came, in percent.</summary>
    public int NoShowFeePercent { get; private set; } = 100;

    /// <summary>True when a late cancellation or a missed lesson uses up its reserved credit; else the credit comes back and the fee is charged.</summary>
    public bool LateTakesCredit { get; private set; } = true;

    /// <summary>Minutes a free time is kept for a student who is booking.</summary>
    public int HoldMinutes { get; private set; } = 10;

    /// <summary>Minutes a freed place is kept for the next on the waiting list.</summary>
    public int OfferMinutes { get; private set; } = 120;

    /// <summary>Students book at least so many hours ahead.</summary>
    public int EarliestHours { get; private set; } = 12;

    /// <summary>Students book at most so many days ahead.</summary>
    public int LatestDays { get; private set; } = 60;

    /// <summary>Free times begin at multiples of so many minutes.</summary>
    public int StepMinutes { get; private set; } = 15;

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>The usual terms; common practice, no source.</summary>
    public static BookingTerms Usual(Guid id) => new() { Id = id };

    /// <summary>Takes over what a person entered; checked before.</summary>
    public void Change(BookingTermsDetails details)
    {
        ArgumentNullException.ThrowIfNull(details);
        (NoticeHours, LateFeePercent, NoShowFeePercent, LateTakesCredit) = (details.NoticeHours, details.LateFeePercent, details.NoShowFeePercent, details.LateTakesCredit);
        (HoldMinutes, OfferMinutes, EarliestHours, LatestDays, StepMinutes) = (details.HoldMinutes, details.OfferMinutes, details.EarliestHours, details.LatestDays, details.StepMinutes);
    }

    /// <summary>True when cancelling at a moment is too late to be free of cost.</summary>
    public bool IsLate(Instant start, Instant now) => now > start - Duration.FromHours(NoticeHours);
}
