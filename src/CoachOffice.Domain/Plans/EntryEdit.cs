
namespace CoachOffice.Domain.Plans;

/// <summary>What somebody wants done with one entry.</summary>
/// <param name="Id">The entry.</param>
/// <param name="Deed">What to do.</param>
/// <param name="Text">The entry as YAML without dash and indent, where it is written; null otherwise.</param>
public sealed record EntryEdit(EntryId Id, EntryDeed Deed, string? Text = null);
