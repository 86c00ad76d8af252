using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Ledger.Documents;

/// <summary>A document that still wants its number.</summary>
/// <param name="PayerId">To whom.</param>
/// <param name="EntryId">The payment of a receipt.</param>
/// <param name="TotalMinor">What was paid, or the balance at the end.</param>
/// <param name="Content">What is printed.</param>
public sealed record DocumentDraft(PayerId PayerId, EntryId? EntryId, long TotalMinor, DocumentContent Content);
