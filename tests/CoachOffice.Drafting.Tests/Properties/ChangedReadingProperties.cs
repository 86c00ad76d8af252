using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>Two things one would like to be true and that are not; here they stand with their exceptions.</summary>
public sealed class ChangedReadingProperties
{
    /// <summary>Without one reading the work is not always a part of the work before: what it hid, held up or ruled out may come forward, and nothing else.</summary>
    [Fact]
    public void A_reading_less_brings_forward_only_what_that_reading_kept_back()
    {
        var (seen, brought) = (0, 0);
        Gen.Select(RandomLessons.One, Gen.Int[0, 23]).Sample((facts, which) =>
        {
            if (which >= facts.Readings.Count || Asks.IsDerivedOrPart(facts.Readings[which].Measure)) return;
            var gone = facts.Readings[which].Measure;
            var (before, after) = (Drafted.Of(facts), Drafted.Of(facts with { Readings = [.. facts.Readings.Where(r => r.Measure != gone)] }));

            foreach (var fresh in after.Focus.Where(f => before.Focus.All(b => b.Fault != f.Fault)))
            {
                Interlocked.Increment(ref brought);
                Assert.True(WasKeptBack(before.Parked.Single(p => p.Fault == fresh.Fault), fresh, gone, before, after), $"{fresh.Fault} came forward without {gone.Value}: it was {before.Parked.Single(p => p.Fault == fresh.Fault).Reason} by {before.Parked.Single(p => p.Fault == fresh.Fault).By}");
            }

            Interlocked.Increment(ref seen);
        }, iter: Drafted.Lessons);
        Drafted.Enough(seen, 10);
        Drafted.Enough(brought, Drafted.Lessons);
    }

    /// <summary>Worsening what the first cause explains keeps that cause first, unless other patterns fire at the new value.</summary>
    [Fact]
    public void A_consequence_that_gets_worse_keeps_its_cause_first_unless_other_patterns_fire()
    {
        var seen = 0;
        Gen.Select(RandomLessons.One, Gen.Int[0, 9], Gen.Double[0.1, 3]).Sample((facts, which, steps) =>
        {
            var before = Drafted.Of(facts);
            if (before.Focus is not [{ Pattern: not null } first, ..]) return;
            var under = before.Causes.Where(c => c.Root == first.Fault).SelectMany(c => c.Explains).Where(f => facts.HasRead(f.Measure)).ToList();
            if (under.Count == 0) return;

            var after = Drafted.Of(Worse(facts, under[which % under.Count], steps));

            if (!before.Fired().SequenceEqual(after.Fired())) return;
            Assert.Equal(first.Fault, after.Focus[0].Fault);
            Interlocked.Increment(ref seen);
        }, iter: Drafted.Lessons);
        Drafted.Enough(seen, 20);
    }

    private static bool WasKeptBack(DraftParked was, DraftFocus now, MeasureId gone, Draft before, Draft after) => was.Reason switch
    {
        // A place is free, what it waited for was read by this reading, or with it a pattern lacked only readings to explain it, and it waited for those.
        ParkedReason.LimitOfTwo or ParkedReason.TrainAfter => WasUndecided(was, before) || before.Focus.Any(b => after.Focus.All(a => a.Fault != b.Fault)) || was.By?.Measure == gone || before.Order().Any(f => f.StartsWith(gone.Value + ".", StringComparison.Ordinal)) || !Same(before, after) || Waits(was, gone),

        // Its cause needed the reading.
        ParkedReason.ExplainedBy => was.By!.Value.Measure == gone || !Same(before, after),

        // The swing was left alone for this reading, or it ruled out the pattern that now fires.
        ParkedReason.NoHarmShown or ParkedReason.TooSmall => before.LeavesIt() || after.Fired().Except(before.Fired()).Any(),

        // A drill was withheld because it would have pushed this very reading further out.
        ParkedReason.NoDrill => before.Withheld.Any(w => w.Reason == WithheldReason.OppositeFault),
        _ => false,
    };

    private static bool WasUndecided(DraftParked was, Draft before) => !before.Trace.First(t => t.Rule == "order:key").Facts.Any(f => f.StartsWith(was.Fault + " ", StringComparison.Ordinal));

    private static bool Same(Draft before, Draft after) => before.Fired().SequenceEqual(after.Fired());

    private static bool Waits(DraftParked was, MeasureId gone) => HouseBook.Book.TrainAfter.Any(l => l.Work == was.Fault.Measure && l.After.Contains(gone));

    private static LessonFacts Worse(LessonFacts facts, FaultId fault, double steps)
    {
        var way = (HouseBook.Book.Find(fault.Measure)!.Step ?? 0) * steps * (fault.Side == Side.Low ? -1 : 1);
        return facts with
        {
            Readings = [.. facts.Readings.Select(r => r.Measure == fault.Measure ? r with { Value = new Quantity(r.Value.Value + way, r.Value.Unit) } : r)],
        };
    }
}
