using NodaTime;

namespace CoachOffice.Data.FollowUps;

/// <summary>Who wants messages, when, for how long and how many at most.</summary>
/// <param name="Now">Messages due by then.</param>
/// <param name="Lease">After it others may take them; longer than the whole batch can take to send.</param>
/// <param name="Owner">A name fresh for each process.</param>
/// <param name="Most">At most so many.</param>
public sealed record ClaimOrder(Instant Now, Duration Lease, string Owner, int Most);
