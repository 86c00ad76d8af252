using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Own;

namespace CoachOffice.Drafting.Checks;

/// <summary>An entry of the rulebook that an anomaly concerns.</summary>
/// <param name="Kind">The list it stands in, e.g. <c>patterns</c>.</param>
/// <param name="Id">Its id; of a range the measure's.</param>
/// <param name="File">The file it stands in; null when the book was not read from files.</param>
/// <param name="Line">The line it begins in, from 1; null together with the file.</param>
public sealed record AnomalyEntry(string Kind, string Id, string? File = null, int? Line = null)
{
    /// <summary>Its name in the book; null for an adjustment or a law of order, of which only the measure is told.</summary>
    public EntryId? Entry => EntryLists.KindOf(Kind) is var kind and not (EntryKind.Adjustment or EntryKind.TrainAfter) ? new EntryId(kind, Id) : null;

    /// <summary>As in a message: <c>sway (patterns/backswing.yaml:51)</c>, or the id alone.</summary>
    public override string ToString() => File is null ? Id : $"{Id} ({File}:{Line})";
}
