using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>Says whether a coach's calendar can be followed, and whether a program does.</summary>
public sealed class ReadCoachFeed(CalendarFeeds feeds)
{
    /// <summary>The state in a list of one, or of none when there is no address.</summary>
    public async Task<Outcome<IReadOnlyList<FeedState>>> Of(Actor actor, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(actor);
        if (!actor.MayTeach || actor.Account is not { } coach) return NotAllowed.To("follow a coach's calendar");
        return await CalendarFeeds.StateOf(feeds.Of(coach), stop) is { } state ? (FeedState[])[state] : [];
    }
}
