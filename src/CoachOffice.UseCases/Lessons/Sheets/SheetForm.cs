namespace CoachOffice.UseCases.Lessons.Sheets;

/// <summary>A coach's own reading sheet as posted.</summary>
public sealed record SheetForm
{
    /// <summary>The sheet that is changed; null for a new one.</summary>
    public Guid? Id { get; init; }

    public int Version { get; init; }

    public string Name { get; init; } = "";

    /// <summary>Ids of measures.</summary>
    public IReadOnlyList<string> Measures { get; init; } = [];
}
