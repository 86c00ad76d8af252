using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Checks.Ranges;

/// <summary>What adjustments by age make of the ranges: none may turn inside out or leave the plausible, two on one edge add up, and one must move something.</summary>
internal sealed class AdjustmentCheck : ICheck
{
    public IEnumerable<Anomaly> Of(RuleBase rules) => rules.Book.Adjustments.SelectMany(a => Of(rules, a));

    private static IEnumerable<Anomaly> Of(RuleBase rules, RangeAdjustment rule)
    {
        var ranges = rules.Book.Ranges.Where(r => r.Measure == rule.Measure && !r.FromGoal).ToList();
        if (!ranges.Exists(r => Moves(rule, r.Limits)))
            yield return Found(rules, rule, AnomalyKind.NeverTrue, AnomalySeverity.Warn, "moves an edge that no club has; leave it out", null);
        foreach (var range in ranges)
        {
            var (low, high) = Moved(rules, range, rule.FromAge);
            var limits = rules.Book.Find(rule.Measure)!.Plausible;
            var example = Example(rules, range, rule.FromAge);
            if (low > high) yield return Found(rules, rule, AnomalyKind.InsideOut, AnomalySeverity.Refuse, Text(rule, range, low, high, "the low edge is above the high one"), example);
            else if (low < limits.Low || low > limits.High || high > limits.High || high < limits.Low)
                yield return Found(rules, rule, AnomalyKind.InsideOut, AnomalySeverity.Refuse, Text(rule, range, low, high, "it reaches beyond the plausible"), example);
        }

        if (rules.Book.Adjustments.Any(o => o.Measure == rule.Measure && o.FromAge < rule.FromAge && ((o.LowBy != 0 && rule.LowBy != 0) || (o.HighBy != 0 && rule.HighBy != 0))))
            yield return Found(rules, rule, AnomalyKind.Overlap, AnomalySeverity.Warn, $"from {rule.FromAge} years on it is added to an adjustment of an earlier age on the same edge; make sure the sum is meant, or write one of them", ranges.Select(r => Example(rules, r, rule.FromAge)).FirstOrDefault());
    }

    private static bool Moves(RangeAdjustment rule, Limits limits) => (rule.LowBy != 0 && limits.Low is not null) || (rule.HighBy != 0 && limits.High is not null);

    private static (double? Low, double? High) Moved(RuleBase rules, WantedRange range, int age)
    {
        var all = rules.Book.Adjustments.Where(a => a.Measure == range.Measure && a.FromAge <= age).ToList();
        return (range.Limits.Low + all.Sum(a => a.LowBy), range.Limits.High + all.Sum(a => a.HighBy));
    }

    private static string Text(RangeAdjustment rule, WantedRange range, double? low, double? high, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"from {rule.FromAge} years on the range of the {Terms.Of(range.Club)} is {low?.ToString(CultureInfo.InvariantCulture) ?? "open"} to {high?.ToString(CultureInfo.InvariantCulture) ?? "open"}: {what}; move it by less");

    /// <summary>A student of that age with the one reading.</summary>
    private static LessonFacts Example(RuleBase rules, WantedRange range, int age)
    {
        var measure = rules.Book.Find(range.Measure)!;
        var value = new Quantity(range.Limits.Low ?? range.Limits.High ?? 0, measure.Unit);
        return PlainLesson.Of(rules.Book, range.Club, age, [new MeasuredValue { Measure = measure.Id, Value = value, Instrument = measure.Instruments[0] }]);
    }

    private static Anomaly Found(RuleBase rules, RangeAdjustment rule, AnomalyKind kind, AnomalySeverity severity, string sentence, LessonFacts? example) =>
        new() { Kind = kind, Severity = severity, Entries = [rules.Place("adjustments", rule.Measure.Value)], Sentence = sentence, Example = example };
}
