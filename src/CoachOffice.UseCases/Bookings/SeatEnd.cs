using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings;

/// <summary>How a seat ended.</summary>
/// <param name="Cost">What it comes to by the terms.</param>
/// <param name="Actor">Who did it.</param>
/// <param name="WasHeld">It was only kept free, never booked for sure.</param>
public sealed record SeatEnd(CancelCost Cost, Actor Actor, bool WasHeld = false);
