namespace CoachOffice.UseCases.FollowUps;

/// <summary>How far a claimed message came without being sent: one of the two is set.</summary>
/// <param name="Over">It does not go; this is what came of it.</param>
/// <param name="Goes">It goes.</param>
public sealed record Preparation(SendingResult? Over, Departure? Goes)
{
    /// <summary>It does not go.</summary>
    public static Preparation Ended(SendingResult result) => new(result, null);

    /// <summary>It goes.</summary>
    public static Preparation Of(Departure departure) => new(null, departure);
}
