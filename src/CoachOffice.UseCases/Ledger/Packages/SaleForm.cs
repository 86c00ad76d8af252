using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Ledger.Packages;

/// <summary>Which package is sold to whom, for whom.</summary>
public sealed record SaleForm
{
    /// <summary>Of the entry; made when the form was shown.</summary>
    public required EntryId Id { get; init; }

    public required PayerId PayerId { get; init; }

    /// <summary>Who takes the lessons.</summary>
    public required StudentId StudentId { get; init; }

    public required PackageOfferId OfferId { get; init; }
}
