using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Checks.Conditions;
using CoachOffice.Drafting.Checks.Examples;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Checks.Reach;

/// <summary>Patterns without a worked case that fires, or without a near miss: one that would fire if a single reading were a step further, taken oftener, or taken or not taken at all.</summary>
internal sealed class CaseCheck(PatternsAtWork work) : ICheck
{
    public IEnumerable<Anomaly> Of(RuleBase rules)
    {
        var cases = rules.Loaded.Cases.ToLookup(c => c.Pattern);
        foreach (var pattern in rules.Book.Patterns.Where(work.CanFire))
        {
            if (!cases[pattern.Id].Any(c => c.Fires))
                yield return Found("has no worked case that fires; add one, such as the example", work.Examples.In(work.Of(pattern), ExampleOf.Fires(pattern)), pattern);
            if (!cases[pattern.Id].Any(c => !c.Fires && new NearMiss(rules.Book, c).IsOne))
                yield return Found("has no worked near miss: a case that does not fire, but would with one reading within a step of where it lies; add one", Nearly(pattern), pattern);
        }
    }

    /// <summary>A lesson that fires, with one of its readings taken back to where the pattern only just does not.</summary>
    private LessonFacts? Nearly(Pattern pattern)
    {
        if (work.Examples.In(work.Of(pattern), ExampleOf.Fires(pattern)) is not { } fires) return null;
        var space = work.Rules.Of(fires.Club);
        var others = fires.Readings.SelectMany(taken => space.Of(taken.Measure).Cells.Where(c => c.Finding?.Grade is Grade.InRange or Grade.Borderline)
            .Select(cell => fires with { Readings = [.. fires.Readings.Select(r => r == taken ? cell.Reading! : r)] }));
        return work.Examples.Among(others, ExampleOf.NearlyFires(pattern));
    }

    private Anomaly Found(string sentence, LessonFacts? example, Pattern pattern) =>
        work.Found(AnomalyKind.NoCase, AnomalySeverity.Warn, sentence, example, pattern);
}
