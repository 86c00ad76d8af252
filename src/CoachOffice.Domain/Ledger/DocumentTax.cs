namespace CoachOffice.Domain.Ledger;

/// <summary>Tax of one rate in a document.</summary>
/// <param name="BasisPoints">The rate in hundredths of a percent.</param>
/// <param name="NetMinor">What it is on.</param>
/// <param name="TaxMinor">The tax.</param>
public sealed record DocumentTax(int BasisPoints, long NetMinor, long TaxMinor);
