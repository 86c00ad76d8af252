using Book = CoachOffice.Domain.Plans.Rulebook;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>The account's working copy of the rulebook.</summary>
public sealed record WorkView
{
    /// <summary>Number of the edition the changes began with; the one in force when there are none.</summary>
    public required int Edition { get; init; }

    /// <summary>The changes, by entry.</summary>
    public required IReadOnlyList<WorkRow> Rows { get; init; }

    /// <summary>Editions others put into force since, oldest first.</summary>
    public required IReadOnlyList<EditionRow> Later { get; init; }

    /// <summary>True when the last drop can be taken back.</summary>
    public required bool CanTakeBack { get; init; }

    /// <summary>The book in force.</summary>
    public required Book Book { get; init; }

    /// <summary>How they fit together on the edition in force.</summary>
    public required WorkCheck Check { get; init; }
}
