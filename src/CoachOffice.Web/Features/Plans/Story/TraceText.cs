using System.Text.RegularExpressions;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>Steps of the reasoning with names in place of ids.</summary>
internal sealed partial class TraceText(Domain.Plans.Rulebook book)
{
    /// <summary>"pattern:sway" is "Pattern: The hips slide away going back".</summary>
    public string Rule(string rule)
    {
        var (kind, id) = rule.Split(':', 2) is [var k, var i] ? (k, i) : (rule, "");
        var name = book.Find(PatternId.From(id.Length > 0 ? id : "none"))?.Name;
        return kind switch
        {
            "pattern" => $"Fits: {name ?? id}",
            "near-miss" => $"Nearly: {name ?? id}",
            _ => MeasureWords.Sentence(rule.Replace(':', ' ')),
        };
    }

    /// <summary>"head-drift not measured" is "Head drift from address not measured".</summary>
    public string Fact(string fact) => Id().Replace(fact, match => Named(match.Value));

    private string Named(string id)
    {
        if (FaultId.Find(id) is { } fault && book.Find(fault.Measure) is not null) return MeasureWords.Of(fault, book);
        return id.Contains('-', StringComparison.Ordinal) && book.Find(MeasureId.From(id)) is { } measure ? measure.Name : id;
    }

    [GeneratedRegex(@"[a-z][a-z0-9]*(?:-[a-z0-9]+)*(?:\.(?:low|high))?", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Id();
}
