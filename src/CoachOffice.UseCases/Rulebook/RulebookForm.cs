using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>A change of the rulebook as somebody wants it.</summary>
/// <param name="Edition">Number of the edition it began with.</param>
/// <param name="Edits">What to do with which entries, each entry once.</param>
/// <param name="Why">The reason, for the history.</param>
public sealed record RulebookForm(int Edition, IReadOnlyList<EntryEdit> Edits, string Why);
