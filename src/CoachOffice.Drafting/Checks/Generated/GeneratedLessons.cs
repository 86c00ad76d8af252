using System.Numerics;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Checks.Algebra;

namespace CoachOffice.Drafting.Checks.Generated;

/// <summary>Students nobody taught, by a seed: each lies where one pattern fires, with other readings around it as they come.</summary>
internal sealed class GeneratedLessons(RuleBase rules, Random chance)
{
    private const int MostOthers = 8;

    private readonly List<Measure> _graded = [.. rules.Book.Measures.Where(m => m.Step is not null)];

    /// <summary>A lesson in one of these boxes.</summary>
    public LessonFacts In(IReadOnlyList<Box> boxes)
    {
        var box = boxes[chance.Next(boxes.Count)];
        var inside = box.Named.Select(place => Any(box.Space.At(place), box.Side(place))).OfType<MeasuredValue>().ToList();
        var named = box.Named.Select(place => rules.Book.Measures[place].Id).ToHashSet();
        var others = Enumerable.Range(0, box.Others + chance.Next(MostOthers + 1)).Select(_ => _graded[chance.Next(_graded.Count)]).Distinct().Where(m => !named.Contains(m.Id));
        var around = others.Select((m, i) => Around(box.Space.Of(m.Id), i < box.Others)).OfType<MeasuredValue>().ToList();
        var facts = PlainLesson.Of(rules.Book, box.Space.Club, box.Space.Age, [.. inside, .. around]);
        return facts with { Student = facts.Student with { Level = chance.Next(2) == 0 ? Level.Improver : Level.Beginner, Goals = [(Goal)chance.Next(Enum.GetValues<Goal>().Length)] } };
    }

    private MeasuredValue? Around(MeasureCells cells, bool inRange) => Any(cells, inRange ? cells.Where(f => f.Grade == Grade.InRange) : cells.All);

    private MeasuredValue? Any(MeasureCells cells, BigInteger set)
    {
        var open = cells.In(set).ToList();
        return open.Count == 0 ? null : open[chance.Next(open.Count)].Reading;
    }
}
