using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What may be sent to a student, and how it reaches them.</summary>
public sealed record ReachView
{
    public required Student Student { get; init; }

    /// <summary>Mail that came back from the address used now, newest first.</summary>
    public required IReadOnlyList<MailBounce> Bounces { get; init; }

    /// <summary>The practice's zone.</summary>
    public required DateTimeZone Zone { get; init; }

    /// <summary>Under 18 today: everything goes to the guardian.</summary>
    public required bool IsMinor { get; init; }
}
