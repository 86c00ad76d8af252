using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger;

/// <summary>What is given up, as typed.</summary>
public sealed record WriteOffForm
{
    /// <summary>Made when the form was shown.</summary>
    public required EntryId Id { get; init; }

    public required PayerId PayerId { get; init; }

    /// <summary>As typed, in the practice's currency.</summary>
    public required string Amount { get; init; }

    /// <summary>Why, for the books.</summary>
    public required string Reason { get; init; }
}
