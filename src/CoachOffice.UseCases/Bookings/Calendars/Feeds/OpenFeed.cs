using System.Security.Cryptography;
using System.Text;
using CoachOffice.Data;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>Answers a calendar program that knows an address.</summary>
public sealed class OpenFeed(OfficeDb db, FeedEntries entries, IClock clock)
{
    // Programs ask every few minutes; that they still do is worth knowing to the hour only.
    private static readonly Duration Noted = Duration.FromHours(1);

    /// <summary>The calendar, or null: unknown, ended, or its person is gone.</summary>
    public async Task<FeedText?> By(string? token, CancellationToken stop = default)
    {
        if (LinkTokens.HashOf(token) is not { } hash) return null;
        var feed = await db.CalendarFeeds.AsNoTracking().SingleOrDefaultAsync(f => f.TokenSha256 == hash && f.RevokedAt == null, stop);
        if (feed is null || await entries.Of(feed, stop) is not { } found) return null;
        await Note(feed, stop);
        var same = CalendarWriter.Published(found.Name, found.Entries, Instant.FromUnixTimeSeconds(0));
        return new FeedText(CalendarWriter.Published(found.Name, found.Entries, clock.GetCurrentInstant()), Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(same)))[..32]);
    }

    private async Task Note(CalendarFeed feed, CancellationToken stop)
    {
        var now = clock.GetCurrentInstant();
        if (feed.LastOpenedAt is { } last && now - last < Noted) return;
        await db.CalendarFeeds.Where(f => f.Id == feed.Id).ExecuteUpdateAsync(f => f.SetProperty(x => x.LastOpenedAt, now), stop);
    }
}
