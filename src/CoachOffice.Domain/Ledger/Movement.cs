namespace CoachOffice.Domain.Ledger;

/// <summary>One side of an entry to be written.</summary>
/// <param name="Account">Which account.</param>
/// <param name="Amount">Debit above zero, credit below.</param>
/// <param name="Rate">The rate of tax it stands under; null where none is asked.</param>
/// <param name="Text">What it is for, where an entry has several lines.</param>
public sealed record Movement(LedgerAccount Account, Money Amount, TaxRate? Rate = null, string Text = "");
