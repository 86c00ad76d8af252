namespace CoachOffice.Domain.Bookings;

/// <summary>What a person enters about booking and cancelling.</summary>
public sealed record BookingTermsDetails
{
    public int NoticeHours { get; init; } = 24;

    public int LateFeePercent { get; init; } = 50;

    public int NoShowFeePercent { get; init; } = 100;

    public bool LateTakesCredit { get; init; } = true;

    public int HoldMinutes { get; init; } = 10;

    public int OfferMinutes { get; init; } = 120;

    public int EarliestHours { get; init; } = 12;

    public int LatestDays { get; init; } = 60;

    public int StepMinutes { get; init; } = 15;

    /// <summary>Everything that is wrong, each with the field and what would be right.</summary>
    public IReadOnlyList<Refusal> Check() =>
    [
        .. Within(NoticeHours, 0, 24 * 30, nameof(NoticeHours), "hours of notice"),
        .. Within(LateFeePercent, 0, 100, nameof(LateFeePercent), "percent"),
        .. Within(NoShowFeePercent, 0, 100, nameof(NoShowFeePercent), "percent"),
        .. Within(HoldMinutes, 2, 60, nameof(HoldMinutes), "minutes"),
        .. Within(OfferMinutes, 10, 24 * 60 * 3, nameof(OfferMinutes), "minutes"),
        .. Within(EarliestHours, 0, 24 * 30, nameof(EarliestHours), "hours"),
        .. Within(LatestDays, 1, 400, nameof(LatestDays), "days"),
        .. StepMinutes is 5 or 10 or 15 or 20 or 30 or 60 ? [] : new[] { new Refusal("terms-step", "Let free times begin every 5, 10, 15, 20, 30 or 60 minutes.", nameof(StepMinutes)) },
    ];

    private static IEnumerable<Refusal> Within(int value, int least, int most, string field, string unit)
    {
        if (value < least || value > most) yield return new("terms-number", $"Write from {least} to {most} {unit}.", field);
    }
}
