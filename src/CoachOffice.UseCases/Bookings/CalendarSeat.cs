using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Who has a place, and how it stands.</summary>
public sealed record CalendarSeat(SeatId Id, StudentId StudentId, string Name, SeatStatus Status)
{
    /// <summary>When the student said "I am coming", or null.</summary>
    public NodaTime.Instant? ComingAt { get; init; }

    /// <summary>They are booked and said so.</summary>
    public bool SaidYes => Status == SeatStatus.Booked && ComingAt is not null;
}
