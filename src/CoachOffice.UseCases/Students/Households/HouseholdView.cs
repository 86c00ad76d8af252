using CoachOffice.Domain.Ledger;
using CoachOffice.UseCases.Students.Groups;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>A payer with those they pay for.</summary>
/// <param name="Payer">Who pays.</param>
/// <param name="Students">By family name, then given name.</param>
public sealed record HouseholdView(Payer Payer, IReadOnlyList<MemberRow> Students);
