using CoachOffice.UseCases.Access;

namespace CoachOffice.UseCases.Bookings.Calendars.Feeds;

/// <summary>Says whether a student's calendar can be followed, and whether a program does.</summary>
public sealed class ReadStudentFeed(CalendarFeeds feeds)
{
    /// <summary>The state; null when there is no address.</summary>
    public Task<FeedState?> Of(VisitPass pass, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(pass);
        return CalendarFeeds.StateOf(feeds.Of(pass.StudentId), stop);
    }
}
