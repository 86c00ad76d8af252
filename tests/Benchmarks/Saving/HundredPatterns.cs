using System.Globalization;
using System.Text.RegularExpressions;
using CoachOffice.Benchmarks.Engine;
using CoachOffice.Domain;
using CoachOffice.Drafting;
using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Patterns;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Benchmarks.Saving;

/// <summary>The shipped rules with generated patterns added up to a hundred, of which none is refused by a check, each with a worked case that fires and a near miss.</summary>
internal static partial class HundredPatterns
{
    private const int Wanted = 100;
    private const int Tried = 70;

    public static RulebookText Of(RulebookText shipped)
    {
        var missing = Wanted - RulebookReader.Load(shipped).Value.Book.Patterns.Count;
        var patterns = new GeneratedRules(shipped).Take(Tried).ToDictionary(text => Name().Match(text).Value, StringComparer.Ordinal);
        while (true)
        {
            var loaded = RulebookReader.Load(With(shipped, patterns.Values, "")).Value;
            var anomalies = RuleBaseCheck.AtOnce(loaded);
            var refused = anomalies.Where(a => a.Severity == AnomalySeverity.Refuse).SelectMany(a => a.Entries).Select(e => e.Id).Where(patterns.ContainsKey).ToHashSet(StringComparer.Ordinal);
            if (refused.Count == 0) return Cut(shipped, [.. patterns.OrderBy(p => p.Key, StringComparer.Ordinal).Take(missing).Select(p => p.Value)]);
            TakeOut(patterns, refused);
        }
    }

    /// <summary>Takes out what is refused, and what names one of those.</summary>
    private static void TakeOut(Dictionary<string, string> patterns, HashSet<string> refused)
    {
        while (refused.Count > 0)
        {
            foreach (var id in refused) patterns.Remove(id);
            refused = [.. patterns.Where(p => Name().Matches(p.Value).Any(m => !patterns.ContainsKey(m.Value))).Select(p => p.Key)];
        }
    }

    private static RulebookText Cut(RulebookText shipped, IReadOnlyList<string> patterns)
    {
        var bare = RulebookReader.Load(With(shipped, patterns, "")).Value;
        var cases = RuleBaseCheck.AtOnce(bare).Where(a => a.Kind == AnomalyKind.NoCase && a.Example is not null).Select(Case).ToList();
        var all = With(shipped, patterns, string.Concat(cases));
        var failed = CaseRun.Failures(CompiledRulebook.Compile(RulebookReader.Load(all).Value)).ToList();
        return failed.Count == 0 ? all : With(shipped, patterns, string.Concat(cases.Where(c => !failed.Exists(f => f.ToString().Contains(Name().Match(c).Value, StringComparison.Ordinal)))));
    }

    private static string Case(Anomaly anomaly)
    {
        var (example, fires) = (anomaly.Example!, anomaly.Sentence.StartsWith("has no worked case that fires", StringComparison.Ordinal));
        var readings = string.Join(", ", example.Readings.Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Measure.Value}: {{ value: {r.Value.Value}, readings: {r.Readings} }}")));
        return string.Create(CultureInfo.InvariantCulture, $"  - pattern: {anomaly.Entries[0].Id}\n    name: {(fires ? "fires" : "nearly fires")}\n    club: {Terms.Of(example.Club)}\n    readings: {{ {readings} }}\n    club-speed-goal: {example.Student.ClubSpeedGoal!.Value.Value}\n    fires: {(fires ? "true" : "false")}\n    why: As the checks say.\n\n");
    }

    private static RulebookText With(RulebookText shipped, IEnumerable<string> patterns, string cases)
    {
        var text = shipped.With([KeyValuePair.Create("patterns/generated.yaml", $"patterns:\n{string.Concat(patterns)}")]);
        return cases.Length == 0 ? text : text.With([KeyValuePair.Create("cases/generated.yaml", $"cases:\n{cases}")]);
    }

    [GeneratedRegex(@"generated-\d+", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Name();
}
