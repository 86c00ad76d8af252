using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Something to be paid that no booking makes: balls, a book, a fitting.</summary>
public sealed record ChargeForm
{
    /// <summary>Made when the form was shown.</summary>
    public required EntryId Id { get; init; }

    public required PayerId PayerId { get; init; }

    /// <summary>For whom; may be nobody.</summary>
    public StudentId? StudentId { get; init; }

    public required IReadOnlyList<ChargeLine> Lines { get; init; }
}
