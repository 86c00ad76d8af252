using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Whose diary is wanted.</summary>
/// <param name="Offering">What is to be booked: its places and bays count.</param>
/// <param name="Coaches">Who may give it.</param>
/// <param name="Days">First and last day, in the practice's zone.</param>
/// <param name="Student">Whose other lessons stand in the way; null: nobody's.</param>
/// <param name="Moving">A booking that is to be moved and therefore stands in nobody's way.</param>
public sealed record DiaryQuestion(Offering Offering, IReadOnlyList<AccountId> Coaches, DateInterval Days, StudentId? Student, BookingId? Moving)
{
    /// <summary>The student asks, who can let go what they only keep.</summary>
    public bool ByStudent { get; init; }
}
