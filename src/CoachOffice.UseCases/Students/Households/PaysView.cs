using CoachOffice.Domain.Ledger;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Ledger;

namespace CoachOffice.UseCases.Students.Households;

/// <summary>Who pays for a student, and who is offered.</summary>
public sealed record PaysView
{
    public required Student Student { get; init; }

    /// <summary>Null until there is one.</summary>
    public required HouseholdView? Household { get; init; }

    /// <summary>Those who are plainly at hand: a minor's guardian, or the student.</summary>
    public required IReadOnlyList<PayerDetails> Offered { get; init; }

    /// <summary>Under 18 today.</summary>
    public required bool IsMinor { get; init; }

    /// <summary>What is owed, and lessons left in packages.</summary>
    public required StudentMoney Money { get; init; }
}
