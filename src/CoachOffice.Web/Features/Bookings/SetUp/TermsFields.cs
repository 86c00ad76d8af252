using System.Globalization;
using CoachOffice.Domain.Bookings;

namespace CoachOffice.Web.Features.Bookings.SetUp;

/// <summary>The terms of booking as typed.</summary>
public sealed class TermsFields
{
    public int Version { get; set; }

    public string? NoticeHours { get; set; }

    public string? LateFeePercent { get; set; }

    public string? NoShowFeePercent { get; set; }

    public bool LateTakesCredit { get; set; }

    public string? HoldMinutes { get; set; }

    public string? OfferMinutes { get; set; }

    public string? EarliestHours { get; set; }

    public string? LatestDays { get; set; }

    public string? StepMinutes { get; set; }

    internal static TermsFields Of(BookingTerms terms) => new()
    {
        Version = terms.Version,
        NoticeHours = Text(terms.NoticeHours),
        LateFeePercent = Text(terms.LateFeePercent),
        NoShowFeePercent = Text(terms.NoShowFeePercent),
        LateTakesCredit = terms.LateTakesCredit,
        HoldMinutes = Text(terms.HoldMinutes),
        OfferMinutes = Text(terms.OfferMinutes),
        EarliestHours = Text(terms.EarliestHours),
        LatestDays = Text(terms.LatestDays),
        StepMinutes = Text(terms.StepMinutes),
    };

    /// <summary>What is no number becomes one that the check refuses, with its range.</summary>
    internal BookingTermsDetails Details() => new()
    {
        NoticeHours = Number(NoticeHours),
        LateFeePercent = Number(LateFeePercent),
        NoShowFeePercent = Number(NoShowFeePercent),
        LateTakesCredit = LateTakesCredit,
        HoldMinutes = Number(HoldMinutes),
        OfferMinutes = Number(OfferMinutes),
        EarliestHours = Number(EarliestHours),
        LatestDays = Number(LatestDays),
        StepMinutes = Number(StepMinutes),
    };

    internal static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    internal static int Number(string? text) => int.TryParse(text?.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : -1;
}
