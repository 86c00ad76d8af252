using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Patterns;

namespace CoachOffice.Drafting.Words;

/// <summary>Writes which patterns fired on which findings, and which nearly did and what kept them from it.</summary>
internal static class PatternTrace
{
    public static void Write(TraceLog trace, IReadOnlyList<Pattern> fired, IReadOnlyList<PatternMatch> matches)
    {
        foreach (var pattern in fired)
        {
            var match = matches.First(m => m.Pattern.Id == pattern.Id);
            trace.Add($"pattern:{pattern.Id.Value}", [.. match.Matched.Select(FactText.Of), .. match.Passed.Select(m => $"{m.Value} not measured")]);
        }

        foreach (var match in matches.Where(m => m.IsNearMiss)) trace.Add($"near-miss:{match.Pattern.Id.Value}", Facts(match));
    }

    private static List<string> Facts(PatternMatch match)
    {
        List<string> facts = [.. match.Matched.Select(FactText.Of), .. match.Missing.Select(m => $"{m.Value} not measured"), .. match.Against];
        if (match.Pattern.Debatable is { } doubt) facts.Add(doubt);
        return facts;
    }
}
