using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.SetUp;

/// <summary>Lets weekly hours end with a day, or go on. Nothing that is booked moves.</summary>
public sealed class EndHours(OfficeDb db, AuditTrail trail, OutsideHours outside)
{
    /// <summary>What changed, or why not. Hours that end before they begin are taken out; null as the last day lets them go on.</summary>
    public async Task<Outcome<HoursEnded>> After(Guid id, LocalDate? lastDay, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (await db.WeeklyHours.SingleOrDefaultAsync(h => h.Id == id, stop) is not { } hours) return SetUpRefusals.NoHours;
        if (!HoursRight.Of(actor, hours.CoachId)) return HoursRight.Refused;
        var before = await outside.Of(hours.CoachId, stop);
        var ended = new HoursEnded(FormOf(hours), lastDay < hours.ValidFrom, 0);
        if (ended.IsGone) db.WeeklyHours.Remove(hours);
        else hours.EndAfter(lastDay);
        trail.Add(actor, ended.IsGone ? "hours-removed" : "hours-ended", AuditSubject.Hours(id));
        if (await db.TrySave(stop) != Saved.Yes) return SetUpRefusals.Busy;
        var known = before.Select(b => b.Id).ToHashSet();
        return ended with { NowOutside = (await outside.Of(hours.CoachId, stop)).Count(b => !known.Contains(b.Id)) };
    }

    private static HoursForm FormOf(WeeklyHours hours) =>
        new() { CoachId = hours.CoachId, PlaceId = hours.PlaceId, Days = [hours.Day], From = hours.From, Until = hours.Until, ValidFrom = hours.ValidFrom, ValidUntil = hours.ValidUntil };
}
