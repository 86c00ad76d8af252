using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>A page of messages.</summary>
/// <param name="Rows">By due time; sent ones newest first.</param>
/// <param name="Page">From 1.</param>
/// <param name="HasMore">There is another page.</param>
/// <param name="NeedAttention">How many in all wait for a person.</param>
public sealed record MessageList(IReadOnlyList<MessageRow> Rows, int Page, bool HasMore, int NeedAttention)
{
    /// <summary>How many in all wait for a coach's yes.</summary>
    public int Awaiting { get; init; }
}

/// <summary>One message with its state.</summary>
public sealed record MessageRow
{
    public required Guid Id { get; init; }

    public required MessageKind Kind { get; init; }

    public required MessageState State { get; init; }

    /// <summary>Whom it is about, or null.</summary>
    public required StudentId? StudentId { get; init; }

    /// <summary>The student's name, or that of who reads it where it is about no single student.</summary>
    public required string Name { get; init; }

    /// <summary>The plan it belongs to, or null.</summary>
    public required PlanId? PlanId { get; init; }

    public required Instant DueAt { get; init; }

    public Instant? SentAt { get; init; }

    public required int Attempts { get; init; }

    /// <summary>Why it was written.</summary>
    public required string Reason { get; init; }

    /// <summary>The last problem in a sentence, or null.</summary>
    public string? Problem { get; init; }
}

/// <summary>Which messages.</summary>
public enum MessageFilter
{
    /// <summary>Waiting or held: what goes by itself.</summary>
    Open,

    /// <summary>Written, and waiting for a coach's yes.</summary>
    AwaitsApproval,
    NeedsAttention,
    Sent,
    All,
}
