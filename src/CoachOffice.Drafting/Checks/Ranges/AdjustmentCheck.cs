using System.Globalization;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Checks.Ranges;

/// <summary>What adjustments by age and level make of the ranges: none may turn inside out or leave the plausible, two on one edge add up, and one must move something.</summary>
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
            if (Levels(rule).Select(level => WhyNot(rules, rule, range, level)).FirstOrDefault(found => found is not null) is { } wrong) yield return wrong;
        }

        if (rules.Book.Adjustments.TakeWhile(o => o != rule).Any(o => AddsUp(o, rule)))
            yield return Found(rules, rule, AnomalyKind.Overlap, AnomalySeverity.Warn, $"{For(rule)} it is added to another adjustment of the same edge; make sure the sum is meant, or write one of them", ranges.Select(r => Example(rules, r, rule, Levels(rule)[0])).FirstOrDefault());
    }

    private static Anomaly? WhyNot(RuleBase rules, RangeAdjustment rule, WantedRange range, Level level)
    {
        var (low, high) = Moved(rules, range, AgeOf(rule), level);
        var limits = rules.Book.Find(rule.Measure)!.Plausible;
        var what = low > high ? "the low edge is above the high one"
            : low < limits.Low || low > limits.High || high > limits.High || high < limits.Low ? "it reaches beyond the plausible" : null;
        return what is null ? null : Found(rules, rule, AnomalyKind.InsideOut, AnomalySeverity.Refuse, Text(rule, range, low, high, what), Example(rules, range, rule, level));
    }

    /// <summary>Some student has both, on one edge.</summary>
    private static bool AddsUp(RangeAdjustment one, RangeAdjustment other) =>
        one.Measure == other.Measure && Levels(one).Intersect(Levels(other)).Any() && ((one.LowBy != 0 && other.LowBy != 0) || (one.HighBy != 0 && other.HighBy != 0));

    private static IReadOnlyList<Level> Levels(RangeAdjustment rule) => rule.Levels ?? Enum.GetValues<Level>();

    private static int AgeOf(RangeAdjustment rule) => rule.FromAge == 0 ? PlainLesson.GrownUp : rule.FromAge;

    private static string For(RangeAdjustment rule) => rule.Levels is null ? $"from {rule.FromAge} years on"
        : $"{(rule.FromAge == 0 ? "" : $"from {rule.FromAge} years on, ")}for {string.Join(", ", rule.Levels.Select(l => Terms.Of(l)))}";

    private static bool Moves(RangeAdjustment rule, Limits limits) => (rule.LowBy != 0 && limits.Low is not null) || (rule.HighBy != 0 && limits.High is not null);

    private static (double? Low, double? High) Moved(RuleBase rules, WantedRange range, int age, Level level)
    {
        var all = rules.Book.Adjustments.Where(a => a.Measure == range.Measure && a.FromAge <= age && Levels(a).Contains(level)).ToList();
        return (range.Limits.Low + all.Sum(a => a.LowBy), range.Limits.High + all.Sum(a => a.HighBy));
    }

    private static string Text(RangeAdjustment rule, WantedRange range, double? low, double? high, string what) =>
        $"{For(rule)} the range of the {Terms.Of(range.Club)} is {low?.ToString(CultureInfo.InvariantCulture) ?? "open"} to {high?.ToString(CultureInfo.InvariantCulture) ?? "open"}: {what}; move it by less";

    /// <summary>A student of that age and level with the one reading.</summary>
    private static LessonFacts Example(RuleBase rules, WantedRange range, RangeAdjustment rule, Level level)
    {
        var measure = rules.Book.Find(range.Measure)!;
        var value = new Quantity(range.Limits.Low ?? range.Limits.High ?? 0, measure.Unit);
        return PlainLesson.Of(rules.Book, range.Club, AgeOf(rule), [new MeasuredValue { Measure = measure.Id, Value = value, Instrument = measure.Instruments[0] }], level);
    }

    private static Anomaly Found(RuleBase rules, RangeAdjustment rule, AnomalyKind kind, AnomalySeverity severity, string sentence, LessonFacts? example) =>
        new() { Kind = kind, Severity = severity, Entries = [rules.Place("adjustments", rule.Measure.Value)], Sentence = sentence, Example = example };
}
