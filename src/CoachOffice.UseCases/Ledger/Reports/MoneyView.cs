using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger.Reports;

/// <summary>Who owes what today.</summary>
/// <param name="Owing">Longest overdue first.</param>
/// <param name="OnAccount">Payers with money on account, most first.</param>
/// <param name="Owed">Sum of what is owed.</param>
/// <param name="Overdue">Sum of what is overdue.</param>
/// <param name="Held">Sum of what stands on account.</param>
public sealed record MoneyView(IReadOnlyList<OwedRow> Owing, IReadOnlyList<OwedRow> OnAccount, Money Owed, Money Overdue, Money Held);
