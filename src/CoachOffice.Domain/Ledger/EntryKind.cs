namespace CoachOffice.Domain.Ledger;

/// <summary>What happened.</summary>
public enum EntryKind
{
    /// <summary>Something was given and is to be paid.</summary>
    Charge,

    /// <summary>Money came.</summary>
    Payment,

    /// <summary>A package was sold: to be paid, and owed in lessons.</summary>
    PackageSale,

    /// <summary>A lesson was taken from a package: its share is earned.</summary>
    CreditUse,

    /// <summary>A package ended with lessons left: the rest is earned.</summary>
    PackageEnd,

    /// <summary>Lessons left in a package were given back: their worth stands on account.</summary>
    PackageReturn,

    /// <summary>Money on account went back to the payer.</summary>
    Refund,

    /// <summary>What was owed is given up.</summary>
    WriteOff,

    /// <summary>An entry was wrong: the same postings the other way.</summary>
    Reversal,
}
