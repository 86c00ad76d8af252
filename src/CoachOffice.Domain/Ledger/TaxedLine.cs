namespace CoachOffice.Domain.Ledger;

/// <summary>An amount taken apart: net and tax make the gross amount, exactly.</summary>
/// <param name="Text">What it is.</param>
/// <param name="Net">Without tax.</param>
/// <param name="Tax">The tax.</param>
/// <param name="Rate">Its rate.</param>
public sealed record TaxedLine(string Text, Money Net, Money Tax, TaxRate Rate)
{
    /// <summary>What is paid.</summary>
    public Money Gross => Net + Tax;
}
