using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Who has a place, and how it stands.</summary>
public sealed record CalendarSeat(SeatId Id, StudentId StudentId, string Name, SeatStatus Status);
