using System.Text.RegularExpressions;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>Sentences of the reader and the checks, which name things by their ids, with the names a coach knows instead.</summary>
internal sealed partial class RuleSentence(Domain.Plans.Rulebook book)
{
    public string Of(string sentence) => Ids().Replace(sentence, id => Named(id.Groups["id"].Value, id.Groups["side"].Value) ?? id.Value).Replace("progression", "ladder", StringComparison.Ordinal);

    private string? Named(string id, string side)
    {
        if (book.Find(MeasureId.From(id)) is { } measure)
        {
            var name = new ConditionText(book).Small(measure.Id);
            return side.Length == 0 ? name : $"{(side == "out" ? "either side of" : side)} {name}";
        }

        if (side.Length > 0) return null;
        var thing = book.Find(PatternId.From(id))?.Name ?? book.Find(DrillId.From(id))?.Name ?? book.Progressions.FirstOrDefault(p => p.Id.Value == id)?.Name;
        return thing is null ? null : $"\"{thing}\"";
    }

    // One word alone may be an ordinary one.
    [GeneratedRegex(@"(?<![\w\-/])(?<id>[a-z][a-z0-9]*(-[a-z0-9]+)+)(\.(?<side>low|high|out))?(?![\w\-/])", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Ids();
}
