using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>One departure of the coach from the draft, with the original beside it. Insert-only.</summary>
public sealed record PlanEdit
{
    public required Guid Id { get; init; }

    public required PlanId PlanId { get; init; }

    /// <summary>What was changed, e.g. <c>stage:2/drill:shadow-head/reps</c>.</summary>
    public required string What { get; init; }

    /// <summary>Before, as shown.</summary>
    public required string Original { get; init; }

    /// <summary>After, as shown; empty when removed.</summary>
    public required string Changed { get; init; }

    public required EditReason Reason { get; init; }

    public string Comment { get; init; } = "";

    public required Instant At { get; init; }

    public required string By { get; init; }
}
