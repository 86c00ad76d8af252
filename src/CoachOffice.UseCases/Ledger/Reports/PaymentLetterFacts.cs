using CoachOffice.UseCases.FollowUps;

namespace CoachOffice.UseCases.Ledger.Reports;

/// <summary>What a letter about something to pay may speak of.</summary>
public sealed record PaymentLetterFacts : OfficeLetterFacts
{
    /// <summary>What is owed in all, with the currency.</summary>
    public required string Amount { get; init; }

    /// <summary>The day the oldest part was to be paid by, written out.</summary>
    public required string Since { get; init; }

    /// <summary>What is open, one line each, the oldest first.</summary>
    public required IReadOnlyList<string> Lines { get; init; }

    /// <summary>Who asks, as on receipts.</summary>
    public required IReadOnlyList<string> From { get; init; }
}
