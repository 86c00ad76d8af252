using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>A plan's whole life as its coach sees it.</summary>
public sealed record PlanView
{
    public required PlanId Id { get; init; }

    public required int Version { get; init; }

    public required PlanStatus Status { get; init; }

    public required StudentId StudentId { get; init; }

    public required string StudentName { get; init; }

    public required LessonId LessonId { get; init; }

    public required LocalDate LessonOn { get; init; }

    public string? HoldReason { get; init; }

    public LocalDate? RestartsOn { get; init; }

    public required string Message { get; init; }

    public required string IfThen { get; init; }

    public Instant? ApprovedAt { get; init; }

    public string? ApprovedBy { get; init; }

    public required IReadOnlyList<StageView> Stages { get; init; }

    public required IReadOnlyList<PlanChange> Changes { get; init; }

    public required IReadOnlyList<PlanEdit> Edits { get; init; }

    /// <summary>Newest first.</summary>
    public required IReadOnlyList<CheckIn> CheckIns { get; init; }

    /// <summary>By due day.</summary>
    public required IReadOnlyList<PlanRetest> Retests { get; init; }

    /// <summary>By due time.</summary>
    public required IReadOnlyList<PlanMessage> Messages { get; init; }
}

/// <summary>A re-test of a plan.</summary>
public sealed record PlanRetest(Guid Id, string FaultName, bool IsSecondLook, LocalDate DueOn, RetestStatus Status, KeptVerdict? Verdict);

/// <summary>A message of a plan.</summary>
public sealed record PlanMessage
{
    public required Guid Id { get; init; }

    public required MessageKind Kind { get; init; }

    public required MessageState State { get; init; }

    public required Instant DueAt { get; init; }

    public Instant? SentAt { get; init; }

    /// <summary>Why it was written.</summary>
    public required string Reason { get; init; }

    /// <summary>The last problem, or why it was left out, in words; null when there was none.</summary>
    public string? Problem { get; init; }
}
