using CoachOffice.Data;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Waiting;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Visits;

/// <summary>What students may book by themselves.</summary>
public sealed class ReadChoices(OfficeDb db, PracticeClock clock, ReadBookingTerms terms)
{
    /// <summary>Offerings by name, those with a coach who teaches here.</summary>
    public async Task<IReadOnlyList<ChoiceView>> All(CancellationToken stop = default)
    {
        var offerings = await db.Offerings.AsNoTracking().Where(o => o.IsBookable && o.ArchivedAt == null && o.Kind != OfferingKind.RemoteReview).OrderBy(o => o.Name).ThenBy(o => o.Id).ToListAsync(stop);
        var coaches = (await db.Users.Where(u => u.DisabledAt == null && (u.Policy == Policy.Owner || u.Policy == Policy.Coach)).Select(u => new { u.Id, u.DisplayName }).ToListAsync(stop))
            .OrderBy(u => u.DisplayName, StringComparer.Ordinal).Select(u => (Id: AccountId.From(u.Id), Name: u.DisplayName)).ToList();
        return [.. offerings.Select(o => new ChoiceView(o, [.. coaches.Where(c => o.Coaches.Contains(c.Id))], SharedLessons.Are(o))).Where(c => c.Coaches.Count > 0)];
    }

    /// <summary>Names of places.</summary>
    public async Task<IReadOnlyDictionary<PlaceId, string>> Places(CancellationToken stop = default) => await db.Places.ToDictionaryAsync(p => p.Id, p => p.Name, stop);

    /// <summary>The lessons of an offering that students join, within what the terms allow, by start.</summary>
    public async Task<IReadOnlyList<JoinableLesson>> Lessons(OfferingId offering, AccountId? coach, VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        var held = await terms.Now(stop);
        var (first, last) = (clock.Now + Duration.FromHours(held.EarliestHours), clock.Now + Duration.FromDays(held.LatestDays + 1));
        var found = await db.Bookings.AsNoTracking().Include(b => b.Seats)
            .Where(b => b.Starts >= first && b.Starts < last && b.OfferingId == offering && (coach == null || b.CoachId == coach) && (b.Status == BookingStatus.Confirmed || b.Status == BookingStatus.Held))
            .OrderBy(b => b.Starts).ThenBy(b => b.Id).ToListAsync(stop);
        return [.. found.Select(b => new JoinableLesson { Id = b.Id, LocalStart = b.LocalStart, Starts = b.Starts, CoachId = b.CoachId, PlaceId = b.PlaceId, FreeSeats = b.FreeSeats, IsIn = b.Seats.Any(s => s.Counts && s.StudentId == pass.StudentId) })];
    }
}
