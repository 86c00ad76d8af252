using System.Text;
using CoachOffice.UseCases.Bookings.Calendars.Feeds;
using CoachOffice.Web.Shell.Security;
using Microsoft.Net.Http.Headers;

namespace CoachOffice.Web.Features.Bookings.Calendars;

/// <summary>Answers calendar programs. They have no cookie; the secret in the address is the proof, and whatever is not a living one is not found.</summary>
internal static class FeedRoute
{
    public static void MapCalendarFeeds(this WebApplication app) =>
        app.MapGet(AnonymousPages.CalendarFeed, Answer).AllowAnonymous().RequireRateLimiting(RateLimits.Links);

    private static async Task<IResult> Answer(string token, OpenFeed open, HttpContext context)
    {
        if (await open.By(token, context.RequestAborted) is not { } feed) return Results.NotFound();
        context.Response.Headers.CacheControl = "private, no-cache";
        return Results.Bytes(Encoding.UTF8.GetBytes(feed.Text), "text/calendar; charset=utf-8", entityTag: new EntityTagHeaderValue($"\"{feed.Tag}\""));
    }
}
