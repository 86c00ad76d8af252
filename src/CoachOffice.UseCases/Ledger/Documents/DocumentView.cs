using CoachOffice.Domain.Ledger;
using NodaTime;

namespace CoachOffice.UseCases.Ledger.Documents;

/// <summary>A document as shown.</summary>
/// <param name="Document">As it was handed out.</param>
/// <param name="ReversedOn">The day its payment was reversed, or null.</param>
/// <param name="MayMail">True when the payer has a mail address.</param>
public sealed record DocumentView(LedgerDocument Document, LocalDate? ReversedOn, bool MayMail);
