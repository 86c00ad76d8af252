using NodaTime;

namespace CoachOffice.Domain.Access;

/// <summary>Who did what to what, when. Insert-only; holds ids and codes, never personal data.</summary>
public sealed record AuditEntry
{
    public required Guid Id { get; init; }

    public required Instant At { get; init; }

    /// <summary>The account, or null for the clock and students.</summary>
    public required Guid? Account { get; init; }

    public required string ActorName { get; init; }

    /// <summary>What was done, e.g. <c>plan-approved</c>.</summary>
    public required string Action { get; init; }

    /// <summary>Kind of thing, e.g. <c>plan</c>.</summary>
    public required string Subject { get; init; }

    public required Guid SubjectId { get; init; }

    /// <summary>Codes and numbers only.</summary>
    public string? Detail { get; init; }
}
