using NodaTime;

namespace CoachOffice.Domain.Ledger;

/// <summary>One line of a document.</summary>
/// <param name="On">Day of what it speaks of.</param>
/// <param name="Text">What it is.</param>
/// <param name="AmountMinor">On a receipt what of it was paid; on a statement a charge above zero, a payment below.</param>
public sealed record DocumentLine(LocalDate On, string Text, long AmountMinor);
