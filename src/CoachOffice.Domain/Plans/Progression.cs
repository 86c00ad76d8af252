using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>The ladder of work for one or more faults, from rehearsal to play.</summary>
public sealed record Progression
{
    /// <summary>Stable id.</summary>
    public required ProgressionId Id { get; init; }

    /// <summary>Name for a person.</summary>
    public required string Name { get; init; }

    /// <summary>The faults it serves. No two progressions serve the same fault.</summary>
    public required IReadOnlyList<FaultId> Faults { get; init; }

    /// <summary>Its rungs, in the order of stages.</summary>
    public required IReadOnlyList<Rung> Rungs { get; init; }
}
