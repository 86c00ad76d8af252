namespace CoachOffice.Domain.Lessons.Imports;

/// <summary>What came of a file: kept with it, so that the page that says so stays.</summary>
public sealed record FileOutcome
{
    public IReadOnlyList<KeptLesson> Lessons { get; init; } = [];

    /// <summary>Rows kept as swings.</summary>
    public int Swings { get; init; }

    /// <summary>Numbers kept.</summary>
    public int Readings { get; init; }

    /// <summary>How many rows were refused.</summary>
    public int RefusedRows { get; init; }

    /// <summary>The first of them.</summary>
    public IReadOnlyList<NotedRow> Refused { get; init; } = [];

    /// <summary>How many rows were kept with a doubt.</summary>
    public int DoubtedRows { get; init; }

    /// <summary>The first of them.</summary>
    public IReadOnlyList<NotedRow> Doubted { get; init; } = [];
}
