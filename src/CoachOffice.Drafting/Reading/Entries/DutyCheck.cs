using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>The rulebook's duty: whoever names a cause has work for it, also for a student with nothing but a room at home.</summary>
internal sealed class DutyCheck(Rulebook book, FaultList faults)
{
    public void Check(IReadOnlyDictionary<PatternId, Node> roots, IReadOnlyDictionary<ProgressionId, Node> progressions)
    {
        var served = new HashSet<ProgressionId>();
        foreach (var pattern in book.Patterns)
        {
            foreach (var root in pattern.Root)
            {
                if (book.For(root) is not { } progression) faults.Add(roots[pattern.Id], $"the root {root} has no progression; add one that serves it");
                else if (served.Add(progression.Id)) CheckStages(progression, root, progressions[progression.Id]);
            }
        }
    }

    private void CheckStages(Progression progression, FaultId root, Node place)
    {
        if (!Drills(progression, Stage.Rehearse).Any(AtHome))
            Add(place, Stage.Rehearse, $"{root} is the root of a pattern, so one rehearse drill here is for home, without kit and without load");
        if (!Drills(progression, Stage.Half).Any()) Add(place, Stage.Half, $"{root} is the root of a pattern, so there is a half drill here");
        if (!Drills(progression, Stage.Full).Any()) Add(place, Stage.Full, $"{root} is the root of a pattern, so there is a full drill here");
    }

    /// <summary>At the rung it is about, also where the ladder has none yet.</summary>
    private void Add(Node ladder, Stage stage, string message)
    {
        var rung = Terms.Of(stage);
        faults.Add((ladder as MapNode)?.Find(rung)?.At ?? ladder.At, Node.Inside(ladder.Path, rung), message);
    }

    private IEnumerable<Drill> Drills(Progression progression, Stage stage) =>
        progression.Rungs.Where(rung => rung.Stage == stage).SelectMany(rung => rung.Drills).Select(id => book.Find(id)!);

    private static bool AtHome(Drill drill) => drill.Kit.Count == 0 && drill.Loads.Count == 0 && drill.Rooms.Contains(Room.Home);
}
