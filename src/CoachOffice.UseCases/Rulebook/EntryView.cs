using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>One entry of the rulebook as text, for its form and for writing it by hand.</summary>
public sealed record EntryView
{
    public required EntryId Id { get; init; }

    /// <summary>The edition it is read from.</summary>
    public required int Edition { get; init; }

    /// <summary>The entry as YAML without dash and indent; null when it is removed.</summary>
    public required string? Text { get; init; }

    /// <summary>The entry as the program brings it; null for one of the practice's own.</summary>
    public required string? Shipped { get; init; }

    /// <summary>True when the practice wrote it or removed it.</summary>
    public required bool IsOwn { get; init; }
}
