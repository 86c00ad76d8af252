using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Lessons;
using NodaTime;

namespace CoachOffice.UseCases.Measuring;

/// <summary>A re-test to be recorded, or its verdict.</summary>
public sealed record RetestView
{
    public required Guid Id { get; init; }

    public required int Version { get; init; }

    public required PlanId PlanId { get; init; }

    public required PlanStatus PlanStatus { get; init; }

    public required StudentId StudentId { get; init; }

    public required string StudentName { get; init; }

    public required Club Club { get; init; }

    public required FaultId Fault { get; init; }

    public required string FaultName { get; init; }

    public required bool IsSecondLook { get; init; }

    public required LocalDate DueOn { get; init; }

    public required RetestStatus Status { get; init; }

    /// <summary>The lesson it is compared with.</summary>
    public required LocalDate LessonOn { get; init; }

    /// <summary>The value of that lesson, in the measure's unit.</summary>
    public required MeasuredValue Before { get; init; }

    /// <summary>The wanted band, in the measure's unit.</summary>
    public required Limits Range { get; init; }

    /// <summary>What opens the next rung.</summary>
    public required PlanGate Gate { get; init; }

    /// <summary>Where the rung stands now.</summary>
    public required StageStatus StageStatus { get; init; }

    /// <summary>The rung of the same ladder that has begun since; null when none has.</summary>
    public Stage? Begun { get; init; }

    /// <summary>The next day this number is read: the same rung's next look, else the second look; null when none is set.</summary>
    public LocalDate? NextLookOn { get; init; }

    /// <summary>The measure asked for first, then the lesson's others.</summary>
    public required IReadOnlyList<SheetField> Fields { get; init; }

    /// <summary>What the student read and sent, as it stands in the field; empty without anything.</summary>
    public string Answer { get; init; } = "";

    /// <summary>The day of the student's swings.</summary>
    public LocalDate? AnsweredOn { get; init; }

    public KeptVerdict? Verdict { get; init; }

    public LessonId? AnsweredBy { get; init; }
}
