using CoachOffice.Domain.Ledger;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>A household as listed.</summary>
/// <param name="Id">The payer.</param>
/// <param name="Name">The payer's name.</param>
/// <param name="Students">Names of those they pay for.</param>
public sealed record HouseholdRow(PayerId Id, string Name, IReadOnlyList<string> Students);
