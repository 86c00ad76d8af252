using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>An offering a student can book.</summary>
/// <param name="Offering">The offering.</param>
/// <param name="Coaches">Who gives it and still teaches here, with the name.</param>
/// <param name="IsShared">True when the practice sets the times and students join.</param>
public sealed record ChoiceView(Offering Offering, IReadOnlyList<(AccountId Id, string Name)> Coaches, bool IsShared);

/// <summary>A lesson of the practice's that a student can join, or wait for.</summary>
public sealed record JoinableLesson
{
    public required BookingId Id { get; init; }

    public required LocalDateTime LocalStart { get; init; }

    public required Instant Starts { get; init; }

    public required AccountId CoachId { get; init; }

    public required PlaceId PlaceId { get; init; }

    public required int FreeSeats { get; init; }

    /// <summary>The student has a place in it.</summary>
    public required bool IsIn { get; init; }
}
