using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger;

/// <summary>One entry as shown.</summary>
/// <param name="Entry">Which.</param>
/// <param name="Words">What happened.</param>
/// <param name="PayerName">Whose.</param>
/// <param name="Amount">What it did to what is owed.</param>
public sealed record EntryView(LedgerEntry Entry, string Words, string PayerName, Money Amount);
