using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>Says what a calendar's file would come to; keeps nothing.</summary>
public sealed class PreviewBusyFile(OfficeDb db, PracticeClock clock)
{
    /// <summary>The times, what is left out, and how many booked lessons lie in them; or why the file is none.</summary>
    public async Task<Outcome<BusyPreview>> Of(string text, Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } coach) return NotAllowed.To("keep busy times");
        var read = BusyReader.Read(text, await clock.Zone(stop), clock.Now);
        if (!read.TryGet(out var file)) return Outcome<BusyPreview>.Refused(read.Refusals);
        if (file.Times.Count == 0) return new Refusal("busy-none", $"No busy time from now on was found in it{Left(file)}.", "File");
        return new BusyPreview(file, await Lessons(coach, file, stop));
    }

    private static string Left(BusyFile file) => file.Skipped.Count == 0 ? "" : $"; left out: {string.Join(", ", file.Skipped.Select(s => $"{s.Count} {s.Why}"))}";

    private async Task<int> Lessons(AccountId coach, BusyFile file, CancellationToken stop)
    {
        var (from, until) = (file.Times[0].Start - Duration.FromDays(1), file.Times[^1].End);
        var booked = await db.Bookings.Where(b => b.CoachId == coach && b.Starts >= from && b.Starts < until && (b.Status == BookingStatus.Held || b.Status == BookingStatus.Confirmed))
            .Select(b => new { b.Starts, b.Ends }).ToListAsync(stop);
        return booked.Count(b => file.Times.Any(t => t.Start < b.Ends && b.Starts < t.End));
    }
}
