using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Ordering;

namespace CoachOffice.Drafting.Replay;

/// <summary>Where two books want other work done first: for each measure the measures before it, directly and over several laws.</summary>
internal sealed class TrainAfterDifference
{
    private readonly Dictionary<MeasureId, Before[]> _changed = [];

    public TrainAfterDifference(Rulebook inForce, Rulebook edited)
    {
        var (old, fresh) = (new TrainAfterLaws(inForce.TrainAfter), new TrainAfterLaws(edited.TrainAfter));
        foreach (var work in inForce.TrainAfter.Concat(edited.TrainAfter).Select(l => l.Work).Distinct())
        {
            var (before, after) = (Of(old, work), Of(fresh, work));
            if (!Same(before, after, _ => true)) _changed.Add(work, [before, after]);
        }
    }

    /// <summary>The measures whose work waits otherwise.</summary>
    public IReadOnlyCollection<MeasureId> Work => _changed.Keys;

    /// <summary>True when the difference shows among these measures that are out.</summary>
    public bool Shows(IReadOnlySet<MeasureId> isOut) => _changed.Any(c => isOut.Contains(c.Key) && !Same(c.Value[0], c.Value[1], isOut.Contains));

    private static Before Of(TrainAfterLaws laws, MeasureId work) => new(laws.Before(work), laws.AllBefore(work));

    private static bool Same(Before one, Before other, Func<MeasureId, bool> matters) =>
        one.Direct.Where(matters).SequenceEqual(other.Direct.Where(matters)) && one.All.Where(matters).SequenceEqual(other.All.Where(matters));

    private sealed record Before(IReadOnlyList<MeasureId> Direct, IReadOnlyList<MeasureId> All);
}
