using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>Changes of entries to gather before they are put into force together.</summary>
/// <param name="Edition">Number of the edition the form was opened with.</param>
/// <param name="Edits">What to do with which entries, each entry once.</param>
public sealed record WorkForm(int Edition, IReadOnlyList<EntryEdit> Edits)
{
    /// <summary>The entries are meant to be new: one of that name must not be there yet.</summary>
    public bool IsNew { get; init; }

    /// <summary>Keep them although they are not right yet.</summary>
    public bool Unfinished { get; init; }
}
