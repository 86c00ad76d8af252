using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What may be sent to a student, and how it reaches them.</summary>
public sealed record ReachView
{
    public required Student Student { get; init; }

    /// <summary>Under 18 today: everything goes to the guardian.</summary>
    public required bool IsMinor { get; init; }
}
