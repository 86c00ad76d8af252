using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Tests.Replay;

/// <summary>Edits a coach may make to any part of a rulebook, drawn by a seed.</summary>
internal sealed class RandomEdits(Random chance)
{
    private readonly MeasureEdits _measures = new(chance);
    private readonly PatternEdits _patterns = new(chance);
    private readonly DrillEdits _drills = new(chance);
    private readonly LawEdits _laws = new(chance);

    /// <summary>One to three edits after each other, named.</summary>
    public (string Name, Rulebook Book) Of(Rulebook book)
    {
        var all = All();
        var names = new List<string>();
        for (var left = chance.Next(1, 4); left > 0; left--)
        {
            var (name, edit) = all[chance.Next(all.Count)];
            names.Add(name);
            book = edit(book);
        }

        return (string.Join(" + ", names), book);
    }

    private IReadOnlyList<(string Name, Func<Rulebook, Rulebook> Edit)> All() =>
    [
        ("move a range", _measures.MoveRange), ("move a range", _measures.MoveRange), ("add a range", _measures.AddRange), ("drop a range", _measures.DropRange),
        ("change an adjustment", _measures.ChangeAdjustment), ("change a measure's numbers", _measures.ChangeNumbers), ("change a measure", _measures.ChangeMeasure),
        ("reorder measures", _measures.Reorder), ("remove a measure", _measures.Remove), ("rename a measure", _measures.Rename),
        ("add a pattern", _patterns.Add), ("remove a pattern", _patterns.Remove), ("loosen two conditions", _patterns.LoosenTwo), ("tighten a pattern", _patterns.Tighten),
        ("change what a pattern says", _patterns.SayElse), ("reword a pattern", _patterns.Reword),
        ("retire a drill", _drills.Retire), ("change a drill", _drills.Change), ("change a progression", _drills.ChangeProgression), ("drop a rung", _drills.DropRung),
        ("change the dosage", _laws.ChangeDosage), ("change a caution", _laws.ChangeCaution), ("drop a caution", _laws.DropCaution), ("train after", _laws.ChangeTrainAfter), ("goals", _laws.ChangeGoals),
    ];
}
