using CoachOffice.Domain;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using NodaTime;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Plans;

/// <summary>A draft beside what the coach has made of it.</summary>
public sealed record DraftView
{
    public required PlanId Id { get; init; }

    public required int Version { get; init; }

    public required PlanStatus Status { get; init; }

    public required StudentId StudentId { get; init; }

    public required string StudentName { get; init; }

    public required LessonId LessonId { get; init; }

    public required LocalDate LessonOn { get; init; }

    public required Club Club { get; init; }

    /// <summary>The stored draft, as it was made.</summary>
    public required Draft Draft { get; init; }

    /// <summary>The book it was made by, for names, units and how to take a reading.</summary>
    public required Book Book { get; init; }

    /// <summary>True when new drafts are still made by that book.</summary>
    public required bool BookIsInForce { get; init; }

    /// <summary>The plan's rungs as they stand, by order.</summary>
    public required IReadOnlyList<StageView> Stages { get; init; }

    /// <summary>What the coach changed, oldest first, each with the draft's original.</summary>
    public required IReadOnlyList<PlanEdit> Edits { get; init; }

    /// <summary>The coach's words on top.</summary>
    public required string Message { get; init; }

    public required Instant MadeAt { get; init; }

    /// <summary>What stands against approving it now, as sentences.</summary>
    public required IReadOnlyList<Refusal> Obstacles { get; init; }
}

/// <summary>One rung as a coach sees it.</summary>
public sealed record StageView
{
    public required Guid Id { get; init; }

    public required int Order { get; init; }

    public required FaultId Fault { get; init; }

    /// <summary>The fault in words: the measure's name and which way it is out.</summary>
    public required string FaultName { get; init; }

    public required Stage Stage { get; init; }

    public required StageStatus Status { get; init; }

    public required IReadOnlyList<PlanDrill> Drills { get; init; }

    public required PlanGate Gate { get; init; }

    public LocalDate? StartedOn { get; init; }

    public LocalDate? DueOn { get; init; }

    public LocalDate? EndedOn { get; init; }

    /// <summary>Drills that could stand here instead, with why one is withheld; each asking searches the whole book.</summary>
    public IReadOnlyList<DrillChoice> Choices => LookUpChoices();

    internal Func<IReadOnlyList<DrillChoice>> LookUpChoices { get; init; } = static () => [];
}

/// <summary>A drill that serves a rung.</summary>
/// <param name="Drill">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Withheld">Why the draft left it out, or null.</param>
public sealed record DrillChoice(string Drill, string Name, WithheldReason? Withheld);
