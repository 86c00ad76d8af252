using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>The plan as the student, or a minor's guardian, gets it: what, how, why, what to watch, when we look again.</summary>
public sealed record PlanSheetView
{
    public required PlanId Id { get; init; }

    public required StudentId StudentId { get; init; }

    /// <summary>Given name only.</summary>
    public required string Student { get; init; }

    public required bool IsMinor { get; init; }

    public required string Practice { get; init; }

    public required string Coach { get; init; }

    public required string EmergencyNumber { get; init; }

    public required PlanStatus Status { get; init; }

    /// <summary>True while nothing is to be practised: paused, or the restart day lies ahead.</summary>
    public required bool IsPaused { get; init; }

    /// <summary>True when it is paused because of a pain report.</summary>
    public required bool PausedForPain { get; init; }

    public LocalDate? RestartsOn { get; init; }

    /// <summary>The coach's words, by paragraph.</summary>
    public required IReadOnlyList<string> Message { get; init; }

    /// <summary>The student's own sentence.</summary>
    public required string IfThen { get; init; }

    /// <summary>Why: one sentence per focus.</summary>
    public required IReadOnlyList<string> Reasons { get; init; }

    public required IReadOnlyList<SheetStage> Stages { get; init; }

    public required IReadOnlyList<string> Cautions { get; init; }

    /// <summary>The next day a number is read again, or null.</summary>
    public LocalDate? LookOn { get; init; }

    /// <summary>The practice's day.</summary>
    public required LocalDate Today { get; init; }

    /// <summary>Days practised, newest first.</summary>
    public required IReadOnlyList<SheetPractice> Practised { get; init; }
}

/// <summary>One rung as the student sees it.</summary>
public sealed record SheetStage
{
    public required Guid Id { get; init; }

    /// <summary>What is worked on, in words.</summary>
    public required string FaultName { get; init; }

    public required Stage Stage { get; init; }

    public required StageStatus Status { get; init; }

    public required IReadOnlyList<PlanDrill> Drills { get; init; }

    /// <summary>What opens the next rung.</summary>
    public required string Gate { get; init; }

    /// <summary>True when reaching the count on two separate days opens it: the check-in asks.</summary>
    public required bool CountsDays { get; init; }

    public LocalDate? DueOn { get; init; }
}

/// <summary>A day on which the student practised.</summary>
public sealed record SheetPractice(LocalDate On, int Minutes);
