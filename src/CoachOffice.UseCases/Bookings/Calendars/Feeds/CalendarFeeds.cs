using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>What making, looking up and ending of calendar addresses have in common; nothing is saved here.</summary>
public sealed class CalendarFeeds(OfficeDb db, INewIds ids, IClock clock)
{
    /// <summary>A coach's addresses that are open: one at most.</summary>
    public IQueryable<CalendarFeed> Of(AccountId coach) => db.CalendarFeeds.Where(f => f.CoachId == coach && f.RevokedAt == null);

    /// <summary>A student's addresses that are open: one at most.</summary>
    public IQueryable<CalendarFeed> Of(StudentId student) => db.CalendarFeeds.Where(f => f.StudentId == student && f.RevokedAt == null);

    /// <summary>Where an address stands, or null when there is none.</summary>
    public static Task<FeedState?> StateOf(IQueryable<CalendarFeed> feeds, CancellationToken stop) =>
        feeds.OrderByDescending(f => f.IssuedAt).Select(f => new FeedState(f.IssuedAt, f.LastOpenedAt)).FirstOrDefaultAsync(stop);

    /// <summary>Ends what is open; how many were.</summary>
    public async Task<int> End(IQueryable<CalendarFeed> feeds, CancellationToken stop)
    {
        var open = await feeds.ToListAsync(stop);
        foreach (var feed in open) feed.Revoke(clock.GetCurrentInstant());
        return open.Count;
    }

    /// <summary>A new address in place of any earlier one; the secret in it is kept nowhere.</summary>
    public async Task<Uri> Make(IQueryable<CalendarFeed> earlier, Func<Guid, string, Instant, CalendarFeed> of, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(of);
        await End(earlier, stop);
        var (token, sha256) = LinkTokens.New();
        db.CalendarFeeds.Add(of(ids.Next(), sha256, clock.GetCurrentInstant()));
        return new Uri($"{await db.Practices.Select(p => p.PublicAddress).SingleAsync(stop)}/calendar/{token}.ics");
    }
}
