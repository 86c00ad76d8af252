using CoachOffice.Domain;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>cautions</c>: what a plan says about safety, and when.</summary>
internal sealed class CautionEntries(Shelf shelf)
{
    /// <summary>All sound cautions, by id.</summary>
    public IReadOnlyList<Caution> Read()
    {
        var found = shelf.ReadAll("cautions", One).OrderBy(c => c.Id.Value, StringComparer.Ordinal).ToList();
        shelf.Cautions = found.DistinctBy(c => c.Id).ToDictionary(c => c.Id);
        return found;
    }

    private Caution One(Entry entry)
    {
        var caution = new Caution(
            CautionId.From(entry.Require("id") is { } id ? Single.NewId(id, shelf.Faults) : "?"),
            entry.Word<CautionOccasion>("when"),
            entry.Text("text"));
        if (entry.Sound) CheckPlaces(entry, caution);
        return caution;
    }

    private void CheckPlaces(Entry entry, Caution caution)
    {
        var rest = caution.Text.Replace("{0}", "", StringComparison.Ordinal);
        if (rest.AsSpan().ContainsAny('{', '}')) shelf.Faults.Add(entry.Find("text")!, "only {0} is filled in a caution; write no other braces");
        if (rest != caution.Text && caution.Occasion <= CautionOccasion.UnderThirteen)
            shelf.Faults.Add(entry.Find("text")!, $"'{Terms.Of(caution.Occasion)}' concerns nothing that could stand for {{0}}; leave it out");
    }
}
