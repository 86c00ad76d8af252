namespace CoachOffice.Domain.Ledger;

/// <summary>The accounts of the double entry. A positive posting is a debit, a negative one a credit.</summary>
public enum LedgerAccount
{
    /// <summary>What a payer owes; below zero = money on account.</summary>
    Receivable,

    /// <summary>Earned by teaching, without tax; earnings are credits and so below zero.</summary>
    Revenue,

    /// <summary>Owed to the tax office; a credit.</summary>
    Tax,

    /// <summary>Paid for lessons not yet given, without tax; a credit.</summary>
    Prepaid,

    /// <summary>Money in the till.</summary>
    Cash,

    /// <summary>Money taken by a card terminal.</summary>
    CardTerminal,

    /// <summary>Money that came to the bank account.</summary>
    Transfer,

    /// <summary>Given up as lost.</summary>
    WriteOff,
}
