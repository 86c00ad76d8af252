using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>Where a coach changes a plan, and why.</summary>
public sealed record EditOf
{
    public required PlanId Plan { get; init; }

    /// <summary>The plan's version the page showed.</summary>
    public required int Version { get; init; }

    /// <summary>The rung; not used when the order or the words change.</summary>
    public Guid StageId { get; init; }

    public required EditReason Reason { get; init; }

    public string Comment { get; init; } = "";
}

/// <summary>A drill's counts and cue as the coach wants them.</summary>
public sealed record DrillCounts
{
    public required int Sets { get; init; }

    public required int Reps { get; init; }

    public required int SessionsPerWeek { get; init; }

    public required int MinutesPerSession { get; init; }

    public required string Cue { get; init; }
}
