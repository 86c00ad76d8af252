namespace CoachOffice.UseCases.FollowUps.ByTime;

/// <summary>How far ahead messages are written, so that a coach sees them coming.</summary>
internal static class Ahead
{
    /// <summary>The weeks the follow-ups page shows.</summary>
    public const int Days = 28;
}
