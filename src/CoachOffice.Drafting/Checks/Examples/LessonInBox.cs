using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Checks.Algebra;

namespace CoachOffice.Drafting.Checks.Examples;

/// <summary>Writes a lesson that lies in a box.</summary>
internal static class LessonInBox
{
    // Plainly out is a better example than hardly or wildly out.
    private static readonly Grade[] Liked = [Grade.Moderate, Grade.Marked, Grade.Mild, Grade.InRange, Grade.Borderline, Grade.NoRange];

    /// <summary>The plainest lesson of a box: a measure that may go unread is left unread.</summary>
    public static LessonFacts Plainest(Box box)
    {
        var chosen = box.Named.Select(place => Plainest(box.Space.At(place), box.Side(place))).OfType<MeasuredValue>().ToList();
        return PlainLesson.Of(box.Space.Book, box.Space.Club, box.Space.Age, [.. chosen, .. InRange(box, chosen)], box.Space.Level);
    }

    private static MeasuredValue? Plainest(MeasureCells cells, System.Numerics.BigInteger set)
    {
        var open = cells.In(set).ToList();
        return open.Exists(c => c.Finding is null) ? null : open.OrderBy(c => Array.IndexOf(Liked, c.Finding!.Grade)).First().Reading;
    }

    /// <summary>As many other measures in range as the box asks for.</summary>
    private static IEnumerable<MeasuredValue> InRange(Box box, List<MeasuredValue> chosen)
    {
        if (box.Others == 0) return [];
        var named = box.Named.Select(place => box.Space.Book.Measures[place].Id).ToHashSet();
        var free = box.Space.Book.Measures.Where(m => m.Derived is null && !named.Contains(m.Id) && chosen.TrueForAll(c => c.Measure != m.Id));
        return free.Select(m => box.Space.Of(m.Id).Cells.FirstOrDefault(c => c.Finding?.Grade == Grade.InRange)?.Reading).OfType<MeasuredValue>().Take(box.Others);
    }
}
