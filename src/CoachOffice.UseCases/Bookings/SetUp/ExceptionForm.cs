using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>A closed or an opened time as entered.</summary>
public sealed record ExceptionForm
{
    /// <summary>Null: the whole practice, which can only be closed.</summary>
    public AccountId? CoachId { get; init; }

    /// <summary>Where the coach teaches then; null: closed.</summary>
    public PlaceId? OpenAt { get; init; }

    public required LocalDateTime From { get; init; }

    public required LocalDateTime Until { get; init; }

    public string Note { get; init; } = "";
}
