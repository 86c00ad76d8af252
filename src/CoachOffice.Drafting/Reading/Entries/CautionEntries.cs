using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>cautions</c>: what a plan says about safety, and when.</summary>
internal sealed class CautionEntries(Shelf shelf)
{
    /// <summary>All sound cautions, by id.</summary>
    public IReadOnlyList<Caution> Read() => [.. shelf.ReadAll("cautions", One).OrderBy(c => c.Id.Value, StringComparer.Ordinal)];

    private Caution One(Entry entry)
    {
        var caution = new Caution(
            CautionId.From(entry.Require("id") is { } id ? Single.NewId(id, shelf.Faults) : "?"),
            entry.Word<CautionOccasion>("when"),
            entry.Text("text"));
        if (caution.Text.Replace("{0}", "", StringComparison.Ordinal).AsSpan().ContainsAny('{', '}'))
            shelf.Faults.Add(entry.Find("text")!, "only {0} is filled in a caution; write no other braces");
        return caution;
    }
}
