using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Adds weekly hours of a coach at a place. Hours that are there already are not added again.</summary>
public sealed class AddHours(OfficeDb db, AuditTrail trail, INewIds ids)
{
    /// <summary>How many were added, or what is wrong.</summary>
    public async Task<Outcome<int>> As(HoursForm form, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(actor);
        if (!HoursRight.Of(actor, form.CoachId)) return HoursRight.Refused;
        if (Wrong(form) is { } wrong) return wrong;
        if (!await db.Places.AnyAsync(p => p.Id == form.PlaceId && p.ArchivedAt == null, stop)) return new Refusal("place-unknown", "Pick a place from the list.", nameof(form.PlaceId));
        if (!await db.Users.AnyAsync(u => u.Id == form.CoachId.Value && (u.Policy == Policy.Owner || u.Policy == Policy.Coach), stop)) return new Refusal("coach-unknown", "Pick a coach from the list.", nameof(form.CoachId));
        var kept = await db.WeeklyHours.Where(h => h.CoachId == form.CoachId).ToListAsync(stop);
        var added = form.Days.Distinct().Where(day => !kept.Exists(h => IsSame(h, form, day))).Select(day => New(form, day)).ToList();
        if (added.Count == 0) return 0;
        db.WeeklyHours.AddRange(added);
        foreach (var hours in added) trail.Add(actor, "hours-added", AuditSubject.Hours(hours.Id));
        return await db.TrySave(stop) == Saved.Yes ? added.Count : SetUpRefusals.Busy;
    }

    private static Refusal? Wrong(HoursForm form)
    {
        if (form.Days.Count == 0) return new("hours-days", "Tick at least one weekday.", nameof(form.Days));
        if (form.Until != LocalTime.Midnight && form.Until <= form.From) return new("hours-until", "Let the hours end after they begin; 00:00 is the end of the day.", nameof(form.Until));
        return form.ValidUntil < form.ValidFrom ? new("hours-valid", "Let the last day not be before the first.", nameof(form.ValidUntil)) : null;
    }

    private static bool IsSame(WeeklyHours kept, HoursForm form, IsoDayOfWeek day) =>
        kept.PlaceId == form.PlaceId && kept.Day == day && kept.From == form.From && kept.Until == form.Until && kept.ValidFrom == form.ValidFrom && kept.ValidUntil == form.ValidUntil;

    private WeeklyHours New(HoursForm form, IsoDayOfWeek day) =>
        WeeklyHours.Of(ids.Next(), form.CoachId, form.PlaceId, new DayHours(day, form.From, form.Until), form.ValidFrom, form.ValidUntil);
}
