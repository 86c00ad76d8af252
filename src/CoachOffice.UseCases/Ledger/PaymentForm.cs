using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Money that came, or goes back, as typed.</summary>
public sealed record PaymentForm
{
    /// <summary>Made when the form was shown.</summary>
    public required EntryId Id { get; init; }

    public required PayerId PayerId { get; init; }

    /// <summary>As typed, in the practice's currency.</summary>
    public required string Amount { get; init; }

    public required PaymentMethod Method { get; init; }

    /// <summary>Number on the terminal's slip or of the transfer; never of a card.</summary>
    public string Reference { get; init; } = "";

    /// <summary>For the books; may be empty.</summary>
    public string Text { get; init; } = "";
}
