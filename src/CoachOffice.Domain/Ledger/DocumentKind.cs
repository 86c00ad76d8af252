namespace CoachOffice.Domain.Ledger;

/// <summary>What is handed to a payer.</summary>
public enum DocumentKind
{
    /// <summary>For one payment: what it paid, and the tax in it.</summary>
    Receipt,

    /// <summary>All entries of a period, with the balance before and after.</summary>
    Statement,
}
