using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Entries as they move what a payer owes.</summary>
internal static class OwedLines
{
    public static OwedLine Of(LedgerEntry entry) => new(entry.Id, entry.On, entry.SumOn(LedgerAccount.Receivable), entry.Reverses);
}
