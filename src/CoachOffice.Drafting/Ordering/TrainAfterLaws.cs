using System.Collections.Concurrent;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Ordering;

/// <summary>The laws of order by measure (E of the ordering), and what follows from them over several steps; worked out once for all drafts by a book, on any thread.</summary>
internal sealed class TrainAfterLaws(IReadOnlyList<TrainAfter> laws)
{
    private readonly ConcurrentDictionary<MeasureId, IReadOnlyList<MeasureId>> _before = [];
    private readonly ConcurrentDictionary<MeasureId, IReadOnlyList<MeasureId>> _allBefore = [];

    /// <summary>The measures a law names directly as coming before this one.</summary>
    public IReadOnlyList<MeasureId> Before(MeasureId work) => _before.GetOrAdd(work, static (m, all) => [.. all.Where(l => l.Work == m).SelectMany(l => l.After).Distinct()], laws);

    /// <summary>All measures that come before this one, over any number of laws, nearest first.</summary>
    public IReadOnlyList<MeasureId> AllBefore(MeasureId work)
    {
        if (_allBefore.TryGetValue(work, out var known)) return known;
        var found = new List<MeasureId> { work };
        for (var i = 0; i < found.Count; i++) found.AddRange(Before(found[i]).Where(m => !found.Contains(m)));
        return _allBefore[work] = [.. found.Skip(1)];
    }

    /// <summary>True when a law says work on the first waits for the second.</summary>
    public bool Waits(MeasureId work, MeasureId after) => AllBefore(work).Contains(after);

    /// <summary>The sentence of the law that names the second as coming before the first, or null.</summary>
    public string? Because(MeasureId work, MeasureId after) => laws.FirstOrDefault(l => l.Work == work && l.After.Contains(after))?.Because;
}
