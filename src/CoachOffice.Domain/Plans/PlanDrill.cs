namespace CoachOffice.Domain.Plans;

/// <summary>A drill as the student gets it: the draft's, or the coach's change of it.</summary>
public sealed record PlanDrill
{
    /// <summary>Id in the rulebook.</summary>
    public required string Drill { get; init; }

    public required string Name { get; init; }

    public required int Sets { get; init; }

    public required int Reps { get; init; }

    public required int SessionsPerWeek { get; init; }

    public required int MinutesPerSession { get; init; }

    public required string Cue { get; init; }

    /// <summary>What to do, in order; copied from the book so that a plan never changes under the student.</summary>
    public IReadOnlyList<string> Steps { get; init; } = [];

    /// <summary>When it is learned, as one sentence.</summary>
    public string DoneWhen { get; init; } = "";
}
