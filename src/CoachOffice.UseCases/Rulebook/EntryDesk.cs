using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>An entry on the editor's desk: as it is in force, as the account changed it, and what it can be made of.</summary>
public sealed record EntryDesk
{
    /// <summary>Null for an entry that is to be made.</summary>
    public required EntryId? Id { get; init; }

    /// <summary>Number of the edition a change of it begins with.</summary>
    public required int Edition { get; init; }

    /// <summary>The entry in force, as YAML without dash and indent; null when there is none.</summary>
    public required string? InForce { get; init; }

    /// <summary>The account's change of it that is not in force; null when there is none.</summary>
    public required EntryEdit? Mine { get; init; }

    /// <summary>True when the practice wrote it or removed it, so that it can go back to what shipped.</summary>
    public required bool IsOwn { get; init; }

    /// <summary>True when the program brings an entry of this id.</summary>
    public required bool Ships { get; init; }

    /// <summary>The book in force.</summary>
    public required Book Book { get; init; }

    /// <summary>Worked cases in force, for the page of their pattern.</summary>
    public required IReadOnlyList<PatternCase> Cases { get; init; }

    /// <summary>All changes of the account that are not in force.</summary>
    public required IReadOnlyList<EntryEdit> Waiting { get; init; }

    /// <summary>What to show first: the change, else what is in force; null for a new or removed one.</summary>
    public string? Text => Mine is { Deed: EntryDeed.Write } ? Mine.Text : InForce;
}
