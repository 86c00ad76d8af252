using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What a stop link allows: to end messages to one student, each purpose apart, and to ask for them again.</summary>
public sealed record StopPass
{
    public required StudentId StudentId { get; init; }

    /// <summary>The purpose of the mail that carried the link.</summary>
    public required MessagePurpose Purpose { get; init; }

    /// <summary>Name of the practice, for the page.</summary>
    public required string Practice { get; init; }

    /// <summary>Since when each purpose is stopped.</summary>
    public required IReadOnlyDictionary<MessagePurpose, Instant> Stopped { get; init; }

    /// <summary>The student is a minor: a guardian reads this, and may withdraw altogether.</summary>
    public required bool ForGuardian { get; init; }

    /// <summary>The guardian withdrew; only the coach brings messages back.</summary>
    public required bool Withdrawn { get; init; }

    /// <summary>The link's own purpose was stopped before.</summary>
    public bool AlreadyStopped => Stopped.ContainsKey(Purpose);
}
