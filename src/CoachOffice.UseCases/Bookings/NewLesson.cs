using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Makes a booking of a form and takes its time, within the caller's transaction and behind its locks; nothing is added to be saved but the time.</summary>
public sealed class NewLesson(BookingFacts facts, TakeTime take, PracticeClock clock, INewIds ids)
{
    /// <summary>The booking, or what stands against it.</summary>
    internal async Task<Outcome<Booking>> Of(BookingForm form, CancellationToken stop)
    {
        var checkedFacts = await facts.Of(form, stop);
        if (!checkedFacts.TryGet(out var asked)) return Outcome<Booking>.Refused(checkedFacts.Refusals);
        var zone = await clock.Zone(stop);
        var time = new BookedTime(form.Start, zone.Id, form.Minutes ?? asked.Offering.Minutes, asked.Offering.BufferMinutes);
        var booking = Booking.Of(form.Id ?? BookingId.From(ids.Next()), asked.Offering, time, new BookingWhere(form.CoachId, form.PlaceId, form.ResourceId), clock.Now);
        booking.Write(form.Note);
        foreach (var student in form.Students) booking.Seat(SeatId.From(ids.Next()), student, SeatTerms.Of(asked.Offering, form.HeldUntil), clock.Now);
        return await take.For(booking, asked.Bays, stop) is { } against ? against : booking;
    }
}
