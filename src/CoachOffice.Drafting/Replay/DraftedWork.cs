using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Replay;

/// <summary>
/// The parts of a draft a student or coach acts on: focus, parked faults, stages, withheld drills and cautions, each word and number of them.
/// Findings, causes, strengths, readings to take next and the trace are left out: they explain the work, they are not the work.
/// </summary>
public sealed record DraftedWork
{
    /// <summary>None, one or two faults to work on.</summary>
    public required IReadOnlyList<DraftFocus> Focus { get; init; }

    /// <summary>Faults that wait.</summary>
    public required IReadOnlyList<DraftParked> Parked { get; init; }

    /// <summary>The ladders of the focuses.</summary>
    public required IReadOnlyList<DraftStage> Stages { get; init; }

    /// <summary>Drills not offered.</summary>
    public required IReadOnlyList<DraftWithheld> Withheld { get; init; }

    /// <summary>What to be careful about.</summary>
    public required IReadOnlyList<DraftCaution> Cautions { get; init; }

    /// <summary>The work of a draft.</summary>
    public static DraftedWork Of(Draft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        return new DraftedWork { Focus = draft.Focus, Parked = draft.Parked, Stages = draft.Stages, Withheld = draft.Withheld, Cautions = draft.Cautions };
    }

    /// <summary>The sections that are not word for word the same, in the order of a draft.</summary>
    public IReadOnlyList<DraftSection> SectionsUnlike(DraftedWork other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return [.. Unlike(other)];
    }

    private IEnumerable<DraftSection> Unlike(DraftedWork other)
    {
        if (!Same(Focus, other.Focus, Same)) yield return DraftSection.Focus;
        if (!Parked.SequenceEqual(other.Parked)) yield return DraftSection.Parked;
        if (!Same(Stages, other.Stages, Same)) yield return DraftSection.Stages;
        if (!Withheld.SequenceEqual(other.Withheld)) yield return DraftSection.Withheld;
        if (!Cautions.SequenceEqual(other.Cautions)) yield return DraftSection.Cautions;
    }

    private static bool Same<T>(IReadOnlyList<T> one, IReadOnlyList<T> other, Func<T, T, bool> same) =>
        one.Count == other.Count && one.Zip(other).All(pair => same(pair.First, pair.Second));

    // Lists inside a record are compared by what they hold; the rest of the record compares itself.
    private static bool Same(DraftFocus one, DraftFocus other) => one.After.SequenceEqual(other.After) && one == (other with { After = one.After });

    private static bool Same(DraftStage one, DraftStage other) => one.Drills.SequenceEqual(other.Drills) && one == (other with { Drills = one.Drills });
}
