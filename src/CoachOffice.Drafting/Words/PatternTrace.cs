using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Words;

/// <summary>Writes which patterns fired on which findings, and which nearly did and what kept them from it.</summary>
internal sealed class PatternTrace
{
    // The same finding stands in the facts of many patterns; it is put into words once a draft.
    private readonly Dictionary<Finding, string> _findings = [];
    private readonly Dictionary<MeasureId, string> _unread = [];

    private PatternTrace()
    {
    }

    public static void Write(TraceLog trace, IReadOnlyList<Pattern> fired, IReadOnlyList<PatternMatch> matches)
    {
        var words = new PatternTrace();
        foreach (var pattern in fired)
        {
            var match = matches.First(m => m.Pattern.Id == pattern.Id);
            trace.Add($"pattern:{pattern.Id.Value}", [.. match.Matched.Select(words.Read), .. match.Passed.Select(words.Unread)]);
        }

        foreach (var match in matches) if (match.IsNearMiss) trace.Add($"near-miss:{match.Pattern.Id.Value}", words.Facts(match));
    }

    private string[] Facts(PatternMatch match)
    {
        var facts = new string[match.Matched.Count + match.Missing.Count + match.Objections.Count + (match.Pattern.Debatable is null ? 0 : 1)];
        var at = 0;
        foreach (var finding in match.Matched) facts[at++] = Read(finding);
        foreach (var measure in match.Missing) facts[at++] = Unread(measure);
        foreach (var objection in match.Objections) facts[at++] = objection.Text;
        if (match.Pattern.Debatable is { } doubt) facts[at] = doubt;
        return facts;
    }

    private string Read(Finding finding)
    {
        if (!_findings.TryGetValue(finding, out var known)) _findings.Add(finding, known = FactText.Of(finding));
        return known;
    }

    private string Unread(MeasureId measure)
    {
        if (!_unread.TryGetValue(measure, out var known)) _unread.Add(measure, known = $"{measure.Value} not measured");
        return known;
    }
}
