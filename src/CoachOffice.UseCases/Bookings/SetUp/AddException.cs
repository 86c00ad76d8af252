using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Closes a time, or opens one beyond the weekly hours. Nothing that is booked moves.</summary>
public sealed class AddException(OfficeDb db, PracticeClock clock, AuditTrail trail, INewIds ids, OutsideHours outside)
{
    /// <summary>How many booked lessons lie outside the hours since then, or what is wrong. The same said twice is kept once.</summary>
    public async Task<Outcome<int>> As(ExceptionForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!HoursRight.Of(actor, form.CoachId)) return HoursRight.Refused;
        var zone = await clock.Zone(stop);
        if (await Wrong(form, zone, stop) is { } wrong) return wrong;
        var before = (await outside.Of(form.CoachId, stop)).Select(b => b.Id).ToHashSet();
        var span = new LocalSpan(form.From, form.Until, zone);
        var made = form.OpenAt is { } place ? HoursException.Open(ids.Next(), form.CoachId!.Value, place, span, form.Note) : HoursException.Closed(ids.Next(), form.CoachId, span, form.Note);
        if (await db.HoursExceptions.AnyAsync(e => e.CoachId == made.CoachId && e.OpenAt == made.OpenAt && e.From == made.From && e.Until == made.Until, stop)) return 0;
        db.HoursExceptions.Add(made);
        trail.Add(actor, form.OpenAt is null ? "hours-closed" : "hours-opened", AuditSubject.Hours(made.Id));
        if (await db.TrySave(stop) != Saved.Yes) return SetUpRefusals.Busy;
        return (await outside.Of(form.CoachId, stop)).Count(b => !before.Contains(b.Id));
    }

    private async Task<Refusal?> Wrong(ExceptionForm form, DateTimeZone zone, CancellationToken stop)
    {
        if (LocalTimes.At(form.From, zone) >= LocalTimes.At(form.Until, zone)) return new("exception-until", "Let it end after it begins.", nameof(form.Until));
        if (Period.DaysBetween(form.From.Date, form.Until.Date) > 400) return new("exception-long", "Close or open at most 400 days at once.", nameof(form.Until));
        if (form.Note.Trim().Length > 200) return new("exception-note", "Write a note of at most 200 characters.", nameof(form.Note));
        if (form.OpenAt is null) return null;
        if (form.CoachId is null) return new("exception-coach", "Say who teaches then: pick a coach.", nameof(form.CoachId));
        return await db.Places.AnyAsync(p => p.Id == form.OpenAt && p.ArchivedAt == null, stop) ? null : new Refusal("place-unknown", "Pick a place from the list.", nameof(form.OpenAt));
    }
}
