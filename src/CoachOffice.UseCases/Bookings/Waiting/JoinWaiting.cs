using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Waiting;

/// <summary>A student joins the waiting list: for a full lesson, or for any time of an offering between two days.</summary>
public sealed class JoinWaiting(OfficeDb db, PracticeClock clock, FindFreeTimes find, AuditTrail trail)
{
    private const int MostPlaces = 10;

    /// <summary>The place in line, or why not. The same wish twice is one place.</summary>
    public async Task<Outcome<Guid>> For(WaitingForm form, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(pass);
        var student = pass.StudentId;
        var waits = await db.WaitingPlaces.AsNoTracking().Where(w => w.StudentId == student && w.Status == WaitingStatus.Waiting).ToListAsync(stop);
        if (waits.Find(w => IsSame(w, form)) is { } there) return there.Id;
        if (waits.Count >= MostPlaces) return new Refusal("waiting-enough", $"You wait for {MostPlaces} things already. Leave one of them first.");
        var wish = form.BookingId is { } booking ? await ForLesson(booking, student, stop) : await ForAnyTime(form, student, stop);
        if (!wish.TryGet(out var wanted)) return Outcome<Guid>.Refused(wish.Refusals);
        db.WaitingPlaces.Add(WaitingPlace.Join(form.Id, student, wanted, clock.Now));
        trail.Add(Actor.Student, "waiting-joined", AuditSubject.Of(student), $"waiting:{form.Id}");
        return await db.TrySave(stop) is Saved.Yes or Saved.WasThere ? form.Id : new Refusal(Clash.Code, "That did not work; try once more.");
    }

    private static bool IsSame(WaitingPlace kept, WaitingForm form) => form.BookingId is { } booking
        ? kept.BookingId == booking
        : kept.BookingId is null && kept.OfferingId == form.OfferingId && kept.CoachId == form.CoachId && kept.FirstDay == form.FirstDay && kept.LastDay == form.LastDay;

    private async Task<Outcome<WaitingWish>> ForLesson(BookingId id, Domain.Students.StudentId student, CancellationToken stop)
    {
        var booking = await db.Bookings.AsNoTracking().Include(b => b.Seats).SingleOrDefaultAsync(b => b.Id == id, stop);
        var offering = booking is null ? null : await db.Offerings.AsNoTracking().SingleAsync(o => o.Id == booking.OfferingId && o.IsBookable, stop);
        if (booking is null || offering is null || !SharedLessons.Are(offering)) return new Refusal("booking-not-found", "There is no such lesson.");
        if (!booking.IsOn || booking.Starts <= clock.Now) return new Refusal("lesson-over", "That lesson does not take place any more, or has begun.");
        if (booking.Seats.Any(s => s.Counts && s.StudentId == student)) return new Refusal("waiting-not-needed", "You have a place in it.");
        if (booking.FreeSeats > 0) return new Refusal("waiting-not-needed", "There is a free place in it: take it.");
        var day = booking.Starts.InZone(await clock.Zone(stop)).Date;
        return new WaitingWish(offering.Id, null, id, day, day);
    }

    private async Task<Outcome<WaitingWish>> ForAnyTime(WaitingForm form, Domain.Students.StudentId student, CancellationToken stop)
    {
        var today = await clock.Today(stop);
        if (form.FirstDay < today) return new Refusal("waiting-days", "Let the first day not be over.", nameof(form.FirstDay));
        if (form.LastDay < form.FirstDay) return new Refusal("waiting-days", "Let the last day not be before the first.", nameof(form.LastDay));
        var question = new FreeTimesQuestion { OfferingId = form.OfferingId, CoachId = form.CoachId, From = form.FirstDay, Until = form.LastDay, Student = student };
        var found = await find.For(question, Actor.Student, stop);
        if (!found.TryGet(out var free)) return Outcome<WaitingWish>.Refused([.. found.Refusals.Select(r => r.Field == nameof(question.Until) ? r with { Sentence = "Wait for up to five weeks at once.", Field = nameof(form.LastDay) } : r)]);
        if (free.Count > 0) return new Refusal("waiting-not-needed", $"There are free times then, the first on {free[0].LocalStart.Date.ToString("dddd d MMMM", System.Globalization.CultureInfo.InvariantCulture)}: take one of them.");
        return new WaitingWish(form.OfferingId, form.CoachId, null, form.FirstDay, form.LastDay);
    }
}
