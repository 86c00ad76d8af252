namespace CoachOffice.Domain.Ledger;

/// <summary>Something with a price and a rate of tax.</summary>
/// <param name="Text">What it is, as written on receipts.</param>
/// <param name="Price">As on the price list: with or without the tax by the practice's rule.</param>
/// <param name="Rate">Its rate.</param>
public sealed record TaxLine(string Text, Money Price, TaxRate Rate);
