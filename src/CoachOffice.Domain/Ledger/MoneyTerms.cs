namespace CoachOffice.Domain.Ledger;

/// <summary>What the practice has decided about money: one row. A change holds for what is written afterwards.</summary>
public sealed class MoneyTerms
{
    private MoneyTerms()
    {
    }

    public Guid Id { get; private set; }

    public TaxMode TaxMode { get; private set; }

    public Rounding Rounding { get; private set; }

    public TaxScope TaxScope { get; private set; }

    /// <summary>Who stands on receipts; empty = the practice's name.</summary>
    public string LegalName { get; private set; } = "";

    /// <summary>Lines divided by a line feed.</summary>
    public string PostalAddress { get; private set; } = "";

    /// <summary>As on receipts; empty = none.</summary>
    public string TaxNumber { get; private set; } = "";

    /// <summary>Days from a charge until it is overdue.</summary>
    public int PaymentDays { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>How the tax of a price is found.</summary>
    public TaxRule TaxRule => new(TaxMode, Rounding, TaxScope);

    /// <summary>What holds until somebody decides: prices with tax in them, half a cent up (common practice, no source).</summary>
    public static MoneyTerms Usual(Guid id)
    {
        var terms = new MoneyTerms { Id = id };
        terms.Change(new MoneyTermsDetails());
        return terms;
    }

    /// <summary>Takes over what a person entered; checked before by <see cref="MoneyTermsDetails.Check"/>.</summary>
    public void Change(MoneyTermsDetails details)
    {
        ArgumentNullException.ThrowIfNull(details);
        (TaxMode, Rounding, TaxScope, PaymentDays) = (details.TaxMode, details.Rounding, details.TaxScope, details.PaymentDays);
        (LegalName, TaxNumber) = (details.LegalName.Trim(), details.TaxNumber.Trim());
        PostalAddress = details.PostalAddress.Trim().ReplaceLineEndings("\n");
    }
}
