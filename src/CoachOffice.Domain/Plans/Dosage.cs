namespace CoachOffice.Domain.Plans;

/// <summary>The defaults by which drills are fitted into a student's week; coach-editable.</summary>
public sealed record Dosage
{
    /// <summary>Per stage.</summary>
    public required IReadOnlyList<StageDosage> Stages { get; init; }

    /// <summary>Most drills in the week's first stages together.</summary>
    public required int MostDrills { get; init; }

    /// <summary>Below this many minutes a week only one drill.</summary>
    public required int OneDrillBelowMinutes { get; init; }

    /// <summary>Below this many minutes a week only two drills.</summary>
    public required int TwoDrillsBelowMinutes { get; init; }

    /// <summary>Fewest repetitions worth a session.</summary>
    public required int FewestReps { get; init; }

    /// <summary>Shortest session of a drill worth planning, minutes.</summary>
    public required int ShortestSessionMinutes { get; init; }

    /// <summary>Sessions a week aimed for, on separate days.</summary>
    public required int SessionsAWeek { get; init; }

    /// <summary>Most full-speed balls in a session.</summary>
    public required int MostFullSpeedBalls { get; init; }

    /// <summary>Days after which any stage is looked at again.</summary>
    public required int LookAgainAfterDays { get; init; }
}
