using System.Collections.Concurrent;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Tests.Replay;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>A measure in another unit, with its value, range, step and error, leads to the same work. Doubling is exact in binary, so nothing is rounded.</summary>
public sealed class UnitScalingProperties
{
    private const double Factor = 2;

    private static readonly ConcurrentDictionary<MeasureId, CompiledRulebook> Scaled = new();

    /// <summary>Left out: what a law or an error of the drafter knows by number (tilt at the top, speed by its goal, the times and the tempo of frames), and sums of parts.</summary>
    private static readonly Gen<MeasureId> Measures = Gen.OneOf(HouseBook.Book.Measures.Select(m => m.Id)
        .Where(m => m != NamedMeasures.TopSpineTilt && m != NamedMeasures.ClubSpeed && !Asks.IsDerivedOrPart(m)).ToArray());

    [Fact]
    public void A_measure_in_another_unit_leads_to_the_same_work()
    {
        var seen = 0;
        Gen.Select(RandomLessons.One, Measures).Sample((facts, measure) =>
        {
            if (!facts.HasRead(measure)) return;
            var book = Scaled.GetOrAdd(measure, m => Scale(HouseBook.Book, m).Compiled());
            var readings = facts.Readings.Select(r => r.Measure == measure ? r with { Value = Times(r.Value) } : r).ToList();

            Assert.Equal(Work(Drafted.Of(facts)), Work(Drafted.By(book, facts with { Readings = readings })));
            Interlocked.Increment(ref seen);
        }, iter: Drafted.Lessons);
        Drafted.Enough(seen, 10);
    }

    private static string Work(Draft draft) => string.Join('\n',
    [
        .. draft.Findings.Select(f => $"{f.Measure} {f.Side} {f.Grade}"),
        .. draft.Causes.Select(c => $"{c.Pattern} {c.Root} {string.Join(' ', c.Explains)}"),
        .. draft.Focus.Select(f => $"{f.Fault} {f.Pattern}"),
        .. draft.Parked.Select(p => $"{p.Fault} {p.Reason} {p.By}"),
        .. draft.Order(),
        .. draft.Stages.SelectMany(s => s.Drills.Select(d => $"{s.Fault} {s.Stage} {d.Drill} {d.Sets} {d.Reps} {s.Gate.Readings}")),
        .. draft.Withheld.Select(w => $"{w.Drill} {w.Reason}"),
        .. draft.MeasureNext.Select(n => $"{n.Measure}"),
        .. draft.Strengths,
    ]);

    private static Rulebook Scale(Rulebook book, MeasureId id) => book.With(
        measures: book.Measures.Select(m => m.Id == id ? m with { Plausible = Times(m.Plausible), Doubtful = m.Doubtful is { } d ? Times(d) : null, SetupError = m.SetupError * Factor, SwingError = m.SwingError * Factor, Step = m.Step * Factor } : m),
        ranges: book.Ranges.Select(r => r.Measure == id ? r with { Limits = Times(r.Limits), Aim = r.Aim is { } aim ? Times(aim) : null } : r),
        adjustments: book.Adjustments.Select(a => a.Measure == id ? a with { LowBy = a.LowBy * Factor, HighBy = a.HighBy * Factor } : a),
        patterns: book.Patterns.Select(p => p with { When = Times(p.When, id), Unless = Times(p.Unless, id) }));

    private static List<Condition> Times(IEnumerable<Condition> conditions, MeasureId id) => [.. conditions.Select(c => c switch
    {
        ValueCondition v when v.Measure == id => v with { Bound = v.Bound * Factor },
        AnyOfCondition any => any with { Any = Times(any.Any, id) },
        _ => c,
    })];

    private static Limits Times(Limits limits) => new(limits.Low * Factor, limits.High * Factor);

    private static Quantity Times(Quantity value) => new(value.Value * Factor, value.Unit);
}
