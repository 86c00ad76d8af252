namespace CoachOffice.Domain.Ledger;

/// <summary>What of a payment went to what was owed.</summary>
/// <param name="Paid">The entry that paid.</param>
/// <param name="Owed">The entry that was owed.</param>
/// <param name="AmountMinor">How much, in smallest units.</param>
/// <param name="BeforeMinor">How much of it was covered before.</param>
public sealed record Cover(EntryId Paid, EntryId Owed, long AmountMinor, long BeforeMinor);
