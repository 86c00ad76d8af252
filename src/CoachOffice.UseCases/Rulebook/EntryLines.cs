using DiffPlex.DiffBuilder;
using DiffPlex.DiffBuilder.Model;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Two texts of an entry line by line.</summary>
public static class EntryLines
{
    /// <summary>What went, what came, what stayed, in the order in which a person reads both; a missing text is empty.</summary>
    public static IReadOnlyList<TextLine> Between(string? old, string? now) =>
        [.. InlineDiffBuilder.Diff((old ?? "").TrimEnd('\n'), (now ?? "").TrimEnd('\n'), ignoreWhiteSpace: false).Lines.Where(line => line.Text.Length > 0).Select(line => new TextLine(Kind(line.Type), line.Text))];

    private static LineKind Kind(ChangeType type) => type switch
    {
        ChangeType.Deleted => LineKind.Gone,
        ChangeType.Inserted => LineKind.Come,
        _ => LineKind.Same,
    };
}
