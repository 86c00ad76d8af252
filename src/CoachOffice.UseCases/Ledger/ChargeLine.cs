namespace CoachOffice.UseCases.Ledger;

/// <summary>One line of a charge by hand, as typed; an empty one is left out.</summary>
/// <param name="Text">What it is, as on receipts.</param>
/// <param name="Price">By the practice's rule with or without tax.</param>
/// <param name="TaxPercent">E.g. <c>20</c> or <c>17,5</c>; empty = 0.</param>
public sealed record ChargeLine(string Text, string Price, string TaxPercent)
{
    /// <summary>True when nothing was typed.</summary>
    public bool IsEmpty => string.IsNullOrWhiteSpace(Text) && string.IsNullOrWhiteSpace(Price);
}
