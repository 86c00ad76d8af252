using System.Collections.Concurrent;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Drafting.Tests.Replay;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>What one more reading may change, and what it may not.</summary>
public sealed class ExtraReadingProperties
{
    private static readonly ConcurrentDictionary<MeasureId, CompiledRulebook> Deaf = new();

    private static readonly Gen<MeasureId> Measures = Gen.OneOf(HouseBook.Book.Measures.Select(m => m.Id).ToArray());

    [Fact]
    public void One_more_reading_in_range_changes_nothing_unless_somebody_asked_for_it()
    {
        var seen = 0;
        Gen.Select(RandomLessons.One, Measures).Sample((facts, measure) =>
        {
            if (facts.HasRead(measure) || Asks.IsDerivedOrPart(measure) || Drafted.InRange(measure, facts.Club) is not { } value) return;
            var (before, after) = (Drafted.Of(facts), Drafted.Of(facts.With(value)));

            if (after.Findings.Single(f => f.Measure == measure.Value).Grade != Grade.InRange) return;

            // The exceptions: a pattern wants it in range or unread; a near miss waited for just this reading; the law of leaving a swing alone reads it.
            if (HouseBook.Book.Patterns.Any(p => p.ForInRange(measure) && Concerns(p, before, after))) return;
            if (before.Trace.Any(t => t.Facts.Contains($"{measure.Value} not measured"))) return;
            if (Asks.InLeaveItLaw(measure)) return;

            Assert.Equal(Priorities(before), Priorities(after));
            Interlocked.Increment(ref seen);
        }, iter: Drafted.Lessons);
        Drafted.Enough(seen, 10);
    }

    [Fact]
    public void One_more_reading_out_of_range_that_no_pattern_speaks_of_reorders_nothing()
    {
        var seen = 0;
        Gen.Select(RandomLessons.One, Measures, Gen.OneOf(Side.Low, Side.High)).Sample((facts, measure, side) =>
        {
            // The exceptions: a part of a derived value is read twice, and a law of order that names the measure makes others wait for it or be worth more.
            if (facts.HasRead(measure) || Asks.IsDerivedOrPart(measure) || Asks.InTrainAfter(measure) || Drafted.Outside(measure, facts.Club, side) is not { } value) return;
            var book = Deaf.GetOrAdd(measure, m => HouseBook.Book.With(patterns: HouseBook.Book.Patterns.Where(p => !p.Of(m))).Compiled());
            var (before, after) = (Drafted.By(book, facts), Drafted.By(book, facts.With(value)));

            // A swing left alone for its flight is not left alone when the flight, or a marked fault, says otherwise.
            if (before.LeavesIt() != after.LeavesIt()) return;

            Assert.Equal(before.Order(), after.Order().Where(fault => !fault.StartsWith(measure.Value + ".", StringComparison.Ordinal)));
            Interlocked.Increment(ref seen);
        }, iter: Drafted.Lessons);
        Drafted.Enough(seen, 10);
    }

    [Fact]
    public void One_more_reading_that_no_unless_speaks_of_silences_no_pattern()
    {
        var seen = 0;
        Gen.Select(RandomLessons.One, Measures, Gen.OneOf(Side.None, Side.Low, Side.High)).Sample((facts, measure, side) =>
        {
            if (facts.HasRead(measure) || Asks.IsDerivedOrPart(measure)) return;
            if ((side == Side.None ? Drafted.InRange(measure, facts.Club) : Drafted.Outside(measure, facts.Club, side)) is not { } value) return;

            var (before, after) = (Drafted.Of(facts), Drafted.Of(facts.With(value)));
            var silenced = before.Fired().Except(after.Fired()).Select(id => HouseBook.Book.Find(PatternId.From(id))!);

            Assert.All(silenced, p => Assert.True(p.InUnless(HouseBook.Book, measure), $"{p.Id.Value} fell silent for {measure.Value}"));
            Interlocked.Increment(ref seen);
        }, iter: Drafted.Lessons);
        Drafted.Enough(seen, 10);
    }

    private static bool Concerns(Pattern pattern, Draft before, Draft after) =>
        before.Trace.Concat(after.Trace).Any(t => t.Rule == $"pattern:{pattern.Id.Value}" || t.Rule == $"near-miss:{pattern.Id.Value}");

    private static string Priorities(Draft draft) => string.Join('\n',
    [
        .. draft.Focus.Select(f => $"{f.Order} {f.Fault} {f.Pattern}"),
        .. draft.Causes.Select(c => $"{c.Pattern} {c.Root} {string.Join(' ', c.Explains)}"),
        .. draft.Parked.Select(p => $"{p.Fault} {p.Reason} {p.By}"),
        .. draft.Order(),
    ]);
}
