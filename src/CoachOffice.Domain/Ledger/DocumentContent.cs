using NodaTime;

namespace CoachOffice.Domain.Ledger;

/// <summary>All that a document prints, as it was on the day: later changes of names, prices or rules do not reach it.</summary>
public sealed record DocumentContent
{
    /// <summary>Who issues it, line by line.</summary>
    public required IReadOnlyList<string> From { get; init; }

    public string TaxNumber { get; init; } = "";

    /// <summary>To whom, line by line.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>ISO 4217 code of all amounts.</summary>
    public required string Currency { get; init; }

    /// <summary>First day of a statement; null on a receipt.</summary>
    public LocalDate? FirstDay { get; init; }

    /// <summary>Last day of a statement, or the day of the payment.</summary>
    public required LocalDate LastDay { get; init; }

    /// <summary>Balance before the first day; null on a receipt.</summary>
    public long? OpeningMinor { get; init; }

    public required IReadOnlyList<DocumentLine> Lines { get; init; }

    /// <summary>The tax in what was paid or charged, by rate.</summary>
    public IReadOnlyList<DocumentTax> Taxes { get; init; } = [];

    public PaymentMethod? Method { get; init; }

    public string Reference { get; init; } = "";
}
