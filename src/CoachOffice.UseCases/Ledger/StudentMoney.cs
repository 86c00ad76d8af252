using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger;

/// <summary>A student's money in a line.</summary>
/// <param name="Payer">Who pays; null before there is anything to pay.</param>
/// <param name="PayerName">Their name.</param>
/// <param name="Balance">What the payer owes; below zero = money on account.</param>
/// <param name="Credits">Lessons left in packages the student may use.</param>
public sealed record StudentMoney(PayerId? Payer, string PayerName, Money Balance, int Credits);
