using CoachOffice.Domain.Ledger;
using NodaTime;

namespace CoachOffice.UseCases.Ledger.Documents;

/// <summary>Which period of whose account.</summary>
/// <param name="Payer">Whose.</param>
/// <param name="FirstDay">First day.</param>
/// <param name="LastDay">Last day.</param>
public sealed record StatementForm(PayerId Payer, LocalDate FirstDay, LocalDate LastDay);
