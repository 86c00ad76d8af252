using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>One gathered change beside what is in force.</summary>
/// <param name="Edit">The change.</param>
/// <param name="Old">The entry in force; null when there is none.</param>
/// <param name="New">The entry as it would be; null when it would go.</param>
/// <param name="Clashes">Somebody else changed the same entry since these changes began.</param>
public sealed record WorkRow(EntryEdit Edit, string? Old, string? New, bool Clashes)
{
    /// <summary>Both texts line by line.</summary>
    public IReadOnlyList<TextLine> Lines => EntryLines.Between(Old, New);
}
