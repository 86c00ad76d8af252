using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>One step in a plan's life: from which state to which, when, by whom and why. Insert-only.</summary>
public sealed record PlanChange
{
    public required Guid Id { get; init; }

    public required PlanId PlanId { get; init; }

    public required PlanStatus From { get; init; }

    public required PlanStatus To { get; init; }

    /// <summary>A sentence or a coded word such as <c>pain-report</c>.</summary>
    public required string Reason { get; init; }

    public required Instant At { get; init; }

    public required string By { get; init; }
}
