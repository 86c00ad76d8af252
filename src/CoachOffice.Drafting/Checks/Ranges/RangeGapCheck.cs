using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Checks.Ranges;

/// <summary>Clubs left out between two that have a range, and severities the reading error swallows. The bands of a measure meet by their making: each ends where the next begins, its far end included.</summary>
internal sealed class RangeGapCheck : ICheck
{
    /// <summary>So many swings that only the setup's own error is left.</summary>
    private const int ManySwings = 1000;

    public IEnumerable<Anomaly> Of(RuleBase rules) => rules.Book.Measures.SelectMany(m => MissingClubs(rules, m).Concat(Swallowed(rules, m)));

    private static IEnumerable<Anomaly> MissingClubs(RuleBase rules, Measure measure)
    {
        var has = Enum.GetValues<Club>().Where(c => rules.Book.RangeOf(measure.Id, c) is not null).ToList();
        if (has.Count == 0) yield break;
        foreach (var club in Enum.GetValues<Club>().Where(c => c > has[0] && c < has[^1] && !has.Contains(c)))
        {
            var middle = rules.Book.RangeOf(measure.Id, has.Last(c => c < club))!.Limits;
            var reading = Reading(measure, middle.Low ?? middle.High ?? measure.Plausible.Low ?? measure.Plausible.High ?? 0, 1);
            yield return Found(rules, measure, $"has no range with the {Terms.Of(club)}, though the clubs on either side of it have one; add it", PlainLesson.Of(rules.Book, club, PlainLesson.GrownUp, [reading]));
        }
    }

    /// <summary>A side on which even a whole step, read ever so often, lies within the reading error: there is no mild, and what is off by little is never seen.</summary>
    private static IEnumerable<Anomaly> Swallowed(RuleBase rules, Measure measure)
    {
        foreach (var range in rules.Book.Ranges.Where(r => r.Measure == measure.Id && !r.FromGoal && measure.Step is not null))
        {
            var step = measure.Step!.Value;
            var values = new[] { range.Limits.Low - step, range.Limits.High + step }.OfType<double>().Where(measure.Plausible.Contains);
            foreach (var reading in values.Select(value => Reading(measure, Math.Round(value, 9), ManySwings)))
            {
                var lesson = PlainLesson.Of(rules.Book, range.Club, PlainLesson.GrownUp, [reading]);
                if (LessonGrading.Grade(rules.Book, lesson).Single(f => f.Measure.Id == measure.Id).Grade != Grade.Borderline) continue;
                yield return Found(rules, measure, $"a whole step beyond the range of the {Terms.Of(range.Club)} is still within the reading error, so nothing is ever mild there; make the step larger than about 1.3 times the setup error", lesson);
                yield break;
            }
        }
    }

    private static MeasuredValue Reading(Measure measure, double value, int count) =>
        new() { Measure = measure.Id, Value = new Quantity(value, measure.Unit), Readings = count, Instrument = measure.Instruments[0] };

    private static Anomaly Found(RuleBase rules, Measure measure, string sentence, LessonFacts example) => new()
    {
        Kind = AnomalyKind.Gap,
        Severity = AnomalySeverity.Warn,
        Entries = [rules.Place("ranges", measure.Id.Value)],
        Sentence = sentence,
        Example = example,
    };
}
