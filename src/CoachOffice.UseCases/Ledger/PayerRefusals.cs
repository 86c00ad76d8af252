using CoachOffice.Domain;

namespace CoachOffice.UseCases.Ledger;

/// <summary>Refusals several operations share.</summary>
internal static class PayerRefusals
{
    public static Refusal NotFound { get; } = new("payer-not-found", "There is no such payer; the link may be old, or the last student they paid for was erased.");
}
