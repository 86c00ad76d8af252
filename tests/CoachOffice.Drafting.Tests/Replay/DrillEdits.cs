using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Tests.Replay;

/// <summary>Edits of drills and progressions.</summary>
internal sealed class DrillEdits(Random chance)
{
    public Rulebook Retire(Rulebook book)
    {
        var id = chance.OneOf(book.Drills).Id;
        return book.With(
            drills: book.Drills.Where(d => d.Id != id),
            progressions: book.Progressions.Select(p => p with { Rungs = [.. p.Rungs.Select(r => r with { Drills = [.. r.Drills.Where(d => d != id)] })] }));
    }

    public Rulebook Change(Rulebook book)
    {
        var drill = chance.OneOf(book.Drills);
        return book.With(drills: book.Drills.Instead(drill, Changed(drill, book)));
    }

    public Rulebook ChangeProgression(Rulebook book)
    {
        var (one, other) = (chance.OneOf(book.Progressions), chance.OneOf(book.Progressions));
        var fresh = chance.Next(3) switch
        {
            0 => one with { Rungs = [.. one.Rungs.Select(r => r with { Drills = chance.Shuffled(r.Drills) })] },
            1 => one with { Rungs = other.Rungs },
            _ => one with { Faults = [.. one.Faults.Skip(1), .. other.Faults.Take(1)] },
        };
        return book.With(progressions: book.Progressions.Instead(one, fresh));
    }

    public Rulebook DropRung(Rulebook book)
    {
        var one = chance.OneOf(book.Progressions);
        return book.With(progressions: book.Progressions.Instead(one, one with { Rungs = one.Rungs.Count == 0 ? [] : one.Rungs.Without(chance.Next(one.Rungs.Count)) }));
    }

    private Drill Changed(Drill drill, Rulebook book) => chance.Next(13) switch
    {
        0 => drill with { Kit = [chance.OneOf<Kit>()] },
        1 => drill with { Rooms = [chance.OneOf<Room>()] },
        2 => drill with { Cue = drill.Cue + ", slowly" },
        3 => drill with { Loads = [new RegionLoad(chance.OneOf<Region>(), chance.Heads())] },
        4 => drill with { Opposites = [new FaultId(chance.OneOf(book.Measures).Id, chance.Heads() ? Side.Low : Side.High)] },
        5 => drill with { MostReps = chance.Next(5, 40) },
        6 => drill with { DoneWhen = drill.DoneWhen with { Hits = drill.DoneWhen.Hits + 1 } },
        7 => drill with { Cautions = [chance.OneOf(book.Cautions).Id] },
        8 => drill with { Levels = [chance.OneOf<Level>()] },
        9 => drill with { FromAge = chance.Next(8, 70) },
        10 => drill with { Trains = [chance.OneOf(book.Progressions.Where(p => p.Faults.Count > 0).ToList()).Faults[0]] },
        11 => drill with { Name = drill.Name + " again", Club = chance.OneOf<DrillClub>() },
        _ => drill with { Steps = ["Stand."] },
    };
}
