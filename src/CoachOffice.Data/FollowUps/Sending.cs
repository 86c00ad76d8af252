using NodaTime;

namespace CoachOffice.Data.FollowUps;

/// <summary>A claimed message in its holder's hands.</summary>
/// <param name="MessageId">Which message.</param>
/// <param name="Owner">Who claimed it.</param>
/// <param name="Now">When this happened.</param>
public sealed record Sending(Guid MessageId, string Owner, Instant Now);
