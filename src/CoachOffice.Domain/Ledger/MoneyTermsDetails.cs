using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Ledger;

/// <summary>What a person enters about the practice's money.</summary>
public sealed record MoneyTermsDetails
{
    public TaxMode TaxMode { get; init; }

    public Rounding Rounding { get; init; }

    public TaxScope TaxScope { get; init; }

    /// <summary>Who stands on receipts; empty = the practice's name.</summary>
    public string LegalName { get; init; } = "";

    /// <summary>As on receipts, up to six lines.</summary>
    public string PostalAddress { get; init; } = "";

    /// <summary>As on receipts, e.g. a VAT number; empty = none.</summary>
    public string TaxNumber { get; init; } = "";

    /// <summary>Days from a charge until it is overdue.</summary>
    public int PaymentDays { get; init; } = 14;

    /// <summary>Everything that is wrong, each with its field and what would be right.</summary>
    public IReadOnlyList<Refusal> Check() => [.. CheckLines(), .. CheckAddress()];

    private IEnumerable<Refusal> CheckLines()
    {
        if (LegalName.Length > 160 || !OneLine.Fits(LegalName) || LegalName != StudentSearch.Whole(LegalName)) yield return new("terms-legal-name", "Write the name in one line of up to 160 characters.", nameof(LegalName));
        if (TaxNumber.Length > 40 || !OneLine.Fits(TaxNumber) || TaxNumber != StudentSearch.Whole(TaxNumber)) yield return new("terms-tax-number", "Write the number in one line of up to 40 characters.", nameof(TaxNumber));
        if (PaymentDays is < 0 or > 365) yield return new("terms-days", "Give 0 to 365 days to pay.", nameof(PaymentDays));
    }

    private IEnumerable<Refusal> CheckAddress()
    {
        var lines = PostalAddress.Trim().ReplaceLineEndings("\n").Split('\n');
        if (lines.Length > 6 || PostalAddress.Length > 500 || lines.Any(line => !OneLine.Fits(line)) || PostalAddress != StudentSearch.Whole(PostalAddress))
            yield return new("terms-address", "Write the address in up to six lines and 500 characters.", nameof(PostalAddress));
    }
}
