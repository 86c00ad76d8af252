using CoachOffice.Drafting.Replay;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>What an edit would change, as far as it is known.</summary>
public sealed record ReplayView
{
    public required ReplayState State { get; init; }

    /// <summary>Hash of the book in force when it began.</summary>
    public required string InForce { get; init; }

    /// <summary>Hash of the edited book.</summary>
    public required string Edited { get; init; }

    /// <summary>What the two books define otherwise.</summary>
    public required BookDifference Difference { get; init; }

    /// <summary>Why every lesson had to be followed; none when readings told which.</summary>
    public required IReadOnlyList<WholeReason> Whole { get; init; }

    public required ReplayCounts Counts { get; init; }

    /// <summary>The newest lessons whose drafts differ, at most <see cref="ReplayTally.MostRows"/>; the counts are of all.</summary>
    public required IReadOnlyList<ReplayRow> Rows { get; init; }

    /// <summary>For a progress bar: 0 to 100.</summary>
    public int Percent => State is ReplayState.Done || Counts.Reached == 0 ? (State is ReplayState.Searching ? 0 : 100) : (int)(100L * Counts.Followed / Counts.Reached);
}
