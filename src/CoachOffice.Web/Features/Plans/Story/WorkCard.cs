using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.UseCases.Plans;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>One thing to work on, with its ladder as it stands now.</summary>
internal sealed record WorkCard
{
    /// <summary>As drafted; null when the coach's plan holds a fault the draft did not choose.</summary>
    public DraftFocus? Focus { get; init; }

    public required FaultId Fault { get; init; }

    public required string Name { get; init; }

    public required IReadOnlyList<WorkRung> Rungs { get; init; }
}

/// <summary>One rung with everything its line and its form need.</summary>
internal sealed record WorkRung
{
    public required StageView Stage { get; init; }

    public required IReadOnlyList<WorkDrill> Drills { get; init; }

    /// <summary>What the coach changed here, oldest first.</summary>
    public IReadOnlyList<PlanEdit> Edits { get; init; } = [];

    public required GateText Gate { get; init; }

    /// <summary>Shortest and longest usual length, days.</summary>
    public StageDosage? Dosage { get; init; }

    /// <summary>"4 to 7 days".</summary>
    public string? Days => Dosage is null ? null : Dosage.ShortestDays == Dosage.LongestDays ? $"{Dosage.LongestDays} days" : $"{Dosage.ShortestDays} to {Dosage.LongestDays} days";

    /// <summary>True when this card has a rung above, or below, it to change places with.</summary>
    public bool HasEarlier { get; init; }

    public bool HasLater { get; init; }
}

/// <summary>A drill as planned, with what else could stand in its place.</summary>
internal sealed record WorkDrill
{
    public required PlanDrill Drill { get; init; }

    public required StageView Stage { get; init; }

    public IReadOnlyList<string> Loads { get; init; } = [];

    public string Source { get; init; } = "";
}
