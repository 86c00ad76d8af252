namespace CoachOffice.Drafting.Replay;

/// <summary>One lesson's work by the book in force and by an edited one, where they differ.</summary>
/// <param name="Before">By the book in force; null when it cannot draft the lesson because it lacks a measure the lesson holds.</param>
/// <param name="After">By the edited book; null likewise.</param>
/// <param name="Sections">The sections that differ, in the order of a draft; all of them when one side is missing.</param>
public sealed record DraftDifference(DraftedWork? Before, DraftedWork? After, IReadOnlyList<DraftSection> Sections)
{
    /// <summary>The difference, or null when there is none.</summary>
    public static DraftDifference? Between(DraftedWork? before, DraftedWork? after)
    {
        if (before is null && after is null) return null;
        var sections = before is null || after is null ? Enum.GetValues<DraftSection>() : before.SectionsUnlike(after);
        return sections.Count == 0 ? null : new DraftDifference(before, after, sections);
    }
}
