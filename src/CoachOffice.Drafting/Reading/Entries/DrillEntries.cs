using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads <c>drills</c>: what they train, where, with what, how, and when they are learned.</summary>
internal sealed class DrillEntries(Shelf shelf)
{
    private readonly FaultSyntax _faults = new(shelf);

    /// <summary>All sound drills, by id.</summary>
    public IReadOnlyList<Drill> Read()
    {
        var found = shelf.ReadAll("drills", One).OrderBy(d => d.Id.Value, StringComparer.Ordinal).ToList();
        shelf.Drills = found.DistinctBy(d => d.Id).ToDictionary(d => d.Id);
        return found;
    }

    private Drill One(Entry entry)
    {
        var drill = new Drill
        {
            Id = DrillId.From(entry.Require("id") is { } id ? Single.NewId(id, shelf.Faults) : "?"),
            Name = entry.Text("name"),
            Trains = _faults.List(entry, entry.Items("trains")),
            Stages = entry.Words<Stage>("stages"),
            Kit = entry.WordsIf<Kit>("kit"),
            Rooms = entry.Words<Room>("rooms"),
            Club = entry.Word<DrillClub>("club"),
            Loads = LoadSyntax.Read(entry.ItemsIf("loads"), shelf.Faults),
            FromAge = entry.WholeIf("from-age", 1, 120),
            Levels = entry.WordsIf<Level>("levels"),
            Steps = [.. entry.SomeItems("steps").Select(step => Single.Text(step, shelf.Faults))],
            Cue = entry.Text("cue"),
            MostReps = entry.WholeIf("most-reps", 1, 1000),
            DoneWhen = Done(entry),
            Opposites = _faults.List(entry, entry.ItemsIf("opposites")),
            Cautions = entry.Distinct(entry.ItemsIf("cautions"), shelf.Ids.Caution),
            Source = entry.Source(),
        };
        foreach (var both in drill.Opposites.Intersect(drill.Trains))
            shelf.Faults.Add(entry.Find("opposites")!, $"{both} is also what the drill trains; a drill cannot push both ways");
        foreach (var caution in drill.Cautions.Where(id => shelf.Cautions.TryGetValue(id, out var known) && known.Occasion != CautionOccasion.Drill))
            shelf.Faults.Add(entry.Find("cautions")!, $"{caution.Value} is not said with a drill; give it 'when: drill' or leave it out here");
        return drill;
    }

    private DoneWhen Done(Entry entry)
    {
        if (entry.Require("done-when") is not { } node || Entry.Of(node, shelf.Faults) is not { } done) return new DoneWhen(1, 1, "?");
        var count = new DoneWhen(done.Whole("hits", 1, 1000), done.Whole("of", 1, 1000), done.Text("what"));
        done.Close();
        if (done.Sound && count.Hits > count.Of) shelf.Faults.Add(done.Find("hits")!, $"{count.Hits} of {count.Of} cannot be reached; hits is at most of");
        return count;
    }
}
