using NodaTime;

namespace CoachOffice.Domain.Ledger;

/// <summary>What one entry did to what a payer owes.</summary>
/// <param name="Id">The entry.</param>
/// <param name="On">Its day.</param>
/// <param name="AmountMinor">Owed above zero, paid below; smallest units.</param>
/// <param name="Reverses">The entry it takes back, or null.</param>
public sealed record OwedLine(EntryId Id, LocalDate On, long AmountMinor, EntryId? Reverses = null);
