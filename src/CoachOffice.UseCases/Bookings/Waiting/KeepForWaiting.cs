using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Waiting;

/// <summary>Keeps a seat for somebody in line and tells them, in the caller's transaction.</summary>
public sealed class KeepForWaiting(ReadBookingTerms terms, PracticeClock clock, INewIds ids, BookingEffects effects)
{
    internal Guid NewId() => ids.Next();

    internal Task<DateTimeZone> Zone(CancellationToken stop) => clock.Zone(stop);

    /// <summary>Until when a lesson that begins then is kept: as the terms say, never beyond its start; null when it is too near to be offered.</summary>
    internal async Task<Instant?> Until(Instant starts, CancellationToken stop)
    {
        var held = await terms.Now(stop);
        if (starts < clock.Now + Duration.FromHours(held.EarliestHours)) return null;
        var until = clock.Now + Duration.FromMinutes(held.OfferMinutes);
        return until < starts ? until : starts > clock.Now ? starts : null;
    }

    /// <summary>A held seat in a booking there is.</summary>
    internal Seat Seat(Booking booking, WaitingPlace waiting, SeatTerms agreed) => booking.Seat(SeatId.From(ids.Next()), waiting.StudentId, agreed, clock.Now);

    /// <summary>The place in line becomes an offer, and the person is written to.</summary>
    internal Task For(WaitingPlace waiting, Booking booking, Seat seat, CancellationToken stop)
    {
        waiting.Offer(seat.Id, seat.HeldUntil!.Value);
        return effects.Offered(waiting, booking, seat, stop);
    }
}
