using CoachOffice.Drafting.Replay;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>How many lessons came how far: "of 240,000 lessons 4,812 are reached, 310 grade otherwise, 41 drafts differ".</summary>
public sealed record ReplayCounts
{
    /// <summary>Past lessons that could be drafted.</summary>
    public required int Lessons { get; init; }

    /// <summary>Those that hold a measure, club and value the edit may reach; the others cannot change.</summary>
    public required int Reached { get; init; }

    /// <summary>Of the reached ones, those followed so far.</summary>
    public required int Followed { get; init; }

    /// <summary>A finding has another side or grade.</summary>
    public required int GradedElse { get; init; }

    /// <summary>Graded by both books and drafted by neither: nothing a draft reads differs.</summary>
    public required int SameFindings { get; init; }

    /// <summary>Drafted by the book in force only: what differs is not worked on.</summary>
    public required int NotInTheWork { get; init; }

    /// <summary>Drafted by both, with the same work.</summary>
    public required int SameWork { get; init; }

    /// <summary>Neither book has all the measures read in them.</summary>
    public required int NoDraft { get; init; }

    /// <summary>Drafts that differ.</summary>
    public required int Differ { get; init; }

    /// <summary>Of the drafts that differ, how many do so in each section.</summary>
    public required IReadOnlyDictionary<DraftSection, int> Sections { get; init; }
}
