using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Plans;

/// <summary>One exercise: what it trains, where, with what, how, and when it is learned.</summary>
public sealed record Drill
{
    /// <summary>Stable id.</summary>
    public required DrillId Id { get; init; }

    /// <summary>Name for a person.</summary>
    public required string Name { get; init; }

    /// <summary>Faults it pulls back; empty for transfer drills, which serve any fault.</summary>
    public required IReadOnlyList<FaultId> Trains { get; init; }

    /// <summary>Rungs of the ladder it fits.</summary>
    public required IReadOnlyList<Stage> Stages { get; init; }

    /// <summary>Everything of this is needed.</summary>
    public IReadOnlyList<Kit> Kit { get; init; } = [];

    /// <summary>Where it can be done.</summary>
    public required IReadOnlyList<Room> Rooms { get; init; }

    /// <summary>With which club.</summary>
    public required DrillClub Club { get; init; }

    /// <summary>Regions it loads; a normal swing is written out by the reader.</summary>
    public IReadOnlyList<RegionLoad> Loads { get; init; } = [];

    /// <summary>Youngest age in years, or null.</summary>
    public int? FromAge { get; init; }

    /// <summary>Levels it suits; empty means all.</summary>
    public IReadOnlyList<Level> Levels { get; init; } = [];

    /// <summary>What to do, in order.</summary>
    public required IReadOnlyList<string> Steps { get; init; }

    /// <summary>One thought, outward-looking first.</summary>
    public required string Cue { get; init; }

    /// <summary>Ceiling of repetitions in one session where the drill has one of its own.</summary>
    public int? MostReps { get; init; }

    /// <summary>When it is learned.</summary>
    public required DoneWhen DoneWhen { get; init; }

    /// <summary>Faults it pushes further out.</summary>
    public IReadOnlyList<FaultId> Opposites { get; init; } = [];

    /// <summary>Cautions of its own.</summary>
    public IReadOnlyList<CautionId> Cautions { get; init; } = [];

    /// <summary>Where it comes from.</summary>
    public required SourceMark Source { get; init; }
}
