using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>Drafts of random lessons, and what properties ask of them.</summary>
internal static class Drafted
{
    /// <summary>How many lessons each property is held against; five times as many in the whole proofs, a handful where the code under test is changed a thousand times.</summary>
    public static int Lessons => FullProof.IsOn ? 5_000 : FullProof.IsShort ? 20 : 1000;

    /// <summary>So many swings that a value beyond an edge by a step is no doubt.</summary>
    private const int ManySwings = 60;

    public static Draft By(CompiledRulebook book, LessonFacts facts) => Drafter.Draft(book, facts);

    /// <summary>By the shipped rulebook.</summary>
    public static Draft Of(LessonFacts facts) => By(HouseBook.Compiled, facts);

    public static void Always(Action<LessonFacts, Draft> holds) => RandomLessons.One.Sample(facts => holds(facts, Of(facts)), iter: Lessons);

    public static IReadOnlyList<string> Fired(this Draft draft) => draft.Rules("pattern:");

    public static IReadOnlyList<string> Rules(this Draft draft, string kind) =>
        [.. draft.Trace.Where(t => t.Rule.StartsWith(kind, StringComparison.Ordinal)).Select(t => t.Rule[kind.Length..])];

    /// <summary>The candidates in their order, and after them those that unread facts leave undecided.</summary>
    public static IReadOnlyList<string> Order(this Draft draft) =>
        [.. draft.Trace.Where(t => t.Rule == "order:key").SelectMany(t => t.Facts).Select(fact => fact.Split(' ')[0])];

    public static IEnumerable<Drill> Drills(this Draft draft) =>
        draft.Stages.SelectMany(s => s.Drills).Select(d => HouseBook.Book.Find(DrillId.From(d.Drill))!);

    public static bool LeavesIt(this Draft draft) => draft.Trace.Any(t => t.Rule == "order:leave-it");

    /// <summary>A reading in the middle of the range; null where the measure has none for this club.</summary>
    public static MeasuredValue? InRange(MeasureId measure, Club club) =>
        HouseBook.Book.RangeOf(measure, club)?.Limits is { } limits && (limits.Low ?? limits.High) is { } edge
            ? HouseBook.Value(measure.Value, ((limits.Low ?? edge) + (limits.High ?? edge)) / 2, ManySwings)
            : null;

    /// <summary>A reading two steps beyond an edge; null where the measure has no such edge.</summary>
    public static MeasuredValue? Outside(MeasureId measure, Club club, Side side)
    {
        var limits = HouseBook.Book.RangeOf(measure, club)?.Limits;
        var edge = side == Side.Low ? limits?.Low : limits?.High;
        var way = 2 * (HouseBook.Book.Find(measure)!.Step ?? 0);
        return edge is { } e ? HouseBook.Value(measure.Value, side == Side.Low ? e - way : e + way, ManySwings) : null;
    }

    /// <summary>The property was really held against that share of the lessons, or it would prove little.</summary>
    public static void Enough(int seen, int lessonsForOne)
    {
        if (!FullProof.IsShort) Assert.InRange(seen, Math.Max(1, Lessons / lessonsForOne), int.MaxValue);
    }

    public static LessonFacts With(this LessonFacts facts, MeasuredValue value) => facts with { Readings = [.. facts.Readings, value] };

    public static bool HasRead(this LessonFacts facts, MeasureId measure) => facts.Readings.Any(r => r.Measure == measure);
}
