namespace CoachOffice.Domain.Ledger;

/// <summary>Whether prices hold the tax.</summary>
public enum TaxMode
{
    /// <summary>The price is what is paid; the tax is in it.</summary>
    Inclusive,

    /// <summary>The tax comes on top of the price.</summary>
    Exclusive,
}
