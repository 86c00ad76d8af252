using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Checks.Algebra;

/// <summary>The lessons of a space in which patterns fire: every `when` with one finding at least moderate, every `needs` in range, no `unless`.</summary>
internal sealed class FiringRegion
{
    private readonly ConditionBoxes _conditions;
    private readonly Dictionary<PatternId, Region> _known = [];
    private readonly Dictionary<PatternId, IReadOnlyList<Box>> _cut = [];

    public FiringRegion(Space space)
    {
        Space = space;
        _conditions = new ConditionBoxes(space, Cut);
    }

    public Space Space { get; }

    /// <summary>The region of a pattern as it stands; empty for a club it does not speak of.</summary>
    public Region Of(Pattern pattern)
    {
        if (_known.TryGetValue(pattern.Id, out var known)) return known;
        return _known[pattern.Id] = PatternEvaluator.SpeaksOf(pattern, Space.Club) ? Build(pattern) : new Region(Space, []);
    }

    /// <summary>The region of a pattern that may differ from the book's, e.g. with one condition left out.</summary>
    public Region Build(Pattern pattern) => new(Space, Wanted(pattern), [.. pattern.Unless.SelectMany(ShutOut)]);

    /// <summary>The lessons a condition under `unless` shuts out.</summary>
    public IReadOnlyList<Box> ShutOut(Condition unless) => _conditions.ShutOut(unless);

    /// <summary>The region of a pattern that another names under `unless`, in boxes.</summary>
    private IReadOnlyList<Box> Cut(PatternId id)
    {
        if (_cut.TryGetValue(id, out var known)) return known;
        return _cut[id] = Space.Book.Find(id) is { } pattern ? Tidy(Of(pattern).Pieces()) : [];
    }

    private List<Box> Wanted(Pattern pattern)
    {
        IReadOnlyList<Alternative> ways = [new Alternative(Box.Everything(Space), [])];
        foreach (var condition in pattern.When)
        {
            var next = _conditions.Of(condition);
            ways = [.. ways.SelectMany(_ => next, (one, two) => one.And(two)).OfType<Alternative>()];
        }

        return Tidy(ways.SelectMany(AtLeastModerate).Select(box => Needs(box, pattern)).OfType<Box>());
    }

    private IEnumerable<Box> AtLeastModerate(Alternative way) =>
        way.Seen.Select(seen => way.Box.And(seen.Measure, seen.Cells & Space.Of(seen.Measure).Moderate)).OfType<Box>();

    private Box? Needs(Box box, Pattern pattern)
    {
        Box? left = box;
        foreach (var measure in pattern.Needs) left = left?.And(measure, Space.Of(measure).InRange);
        return left;
    }

    /// <summary>Without boxes that lie inside others.</summary>
    private static List<Box> Tidy(IEnumerable<Box> boxes)
    {
        var kept = new List<Box>();
        foreach (var box in boxes.OrderBy(b => b.NamedCount))
        {
            if (!kept.Exists(box.IsInside)) kept.Add(box);
        }

        return kept;
    }
}
