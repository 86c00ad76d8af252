using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger.Reports;

/// <summary>A payer whose balance is not nothing.</summary>
/// <param name="Id">Who.</param>
/// <param name="Name">Their name.</param>
/// <param name="Balance">What is owed; below zero = money on account.</param>
/// <param name="Overdue">What of it should have been paid by now.</param>
/// <param name="DaysOverdue">Days since the oldest of it should have been paid.</param>
public sealed record OwedRow(PayerId Id, string Name, Money Balance, Money Overdue, int DaysOverdue);
