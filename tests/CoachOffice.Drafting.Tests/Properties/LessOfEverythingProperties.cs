using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Domain.Students;
using CsCheck;

namespace CoachOffice.Drafting.Tests.Properties;

/// <summary>A student with less of something never gets a drill that asks for more of it.</summary>
public sealed class LessOfEverythingProperties
{
    [Fact]
    public void Less_kit_never_adds_a_drill_that_needs_more() =>
        Gen.Select(RandomLessons.One, Gen.Int[0, 14]).Sample((facts, which) =>
        {
            if (facts.Student.Kit.Count == 0) return;
            var gone = facts.Student.Kit[which % facts.Student.Kit.Count];
            var after = Drafted.Of(facts with { Student = facts.Student with { Kit = [.. facts.Student.Kit.Where(k => k != gone)] } });

            Assert.All(after.Drills(), d => Assert.DoesNotContain(gone, d.Kit));
            var added = after.Drills().Except(Drafted.Of(facts).Drills()).ToList();
            if (added.Count > 0) Assert.Contains(after.Withheld, w => w.Reason == WithheldReason.Kit);
        }, iter: Drafted.Lessons);

    [Fact]
    public void Less_time_never_adds_minutes_or_drills_to_the_first_weeks() =>
        Gen.Select(RandomLessons.One, Gen.Int[1, 100]).Sample((facts, less) =>
        {
            var minutes = Math.Max(0, facts.Student.MinutesPerWeek - less);
            var (before, after) = (Drafted.Of(facts), Drafted.Of(facts with { Student = facts.Student with { MinutesPerWeek = minutes } }));

            Assert.InRange(MinutesOfFirstStages(after), 0, minutes);

            // The exceptions: with another first thing to do, or without the second, its stages are others.
            if (before.Focus.Select(f => f.Fault).SequenceEqual(after.Focus.Select(f => f.Fault)))
                Assert.InRange(FirstStages(after).Count(), 0, FirstStages(before).Count());
        }, iter: Drafted.Lessons);

    [Fact]
    public void A_lower_level_never_gets_a_drill_for_a_higher_one() => Drafted.Always((facts, draft) =>
    {
        Assert.All(draft.Drills(), d => Assert.True(d.Levels.Count == 0 || d.Levels.Contains(facts.Student.Level)));
        var beginner = Drafted.Of(facts with { Student = facts.Student with { Level = Level.Beginner } });
        Assert.All(beginner.Drills(), d => Assert.True(d.Levels.Count == 0 || d.Levels.Contains(Level.Beginner)));
        Assert.InRange(beginner.Focus.Count, 0, 1);
    });

    private static int MinutesOfFirstStages(Draft draft) => FirstStages(draft).Sum(d => d.SessionsPerWeek * d.MinutesPerSession);

    private static IEnumerable<DraftDrill> FirstStages(Draft draft) => draft.Focus.Select(f => draft.Stages.First(s => s.Fault == f.Fault)).SelectMany(s => s.Drills);
}
