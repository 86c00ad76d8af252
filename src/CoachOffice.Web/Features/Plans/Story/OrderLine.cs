using System.Globalization;
using System.Text.RegularExpressions;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans.Drafts;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>The eight keys by which one candidate was put in order, smaller first, as the trace holds them.</summary>
internal sealed partial record OrderLine(FaultId Fault, IReadOnlyList<int> Keys)
{
    private const string Rule = "order:key";

    /// <summary>Every candidate of a draft in the order they came out.</summary>
    public static IReadOnlyList<OrderLine> All(Draft draft) =>
        [.. draft.Trace.Where(t => t.Rule == Rule).SelectMany(t => t.Facts).Select(Read).OfType<OrderLine>()];

    /// <summary>The keys in words, the ones that say something.</summary>
    public IEnumerable<string> InWords()
    {
        if (Keys[0] == 0) yield return "comfort comes first";
        if (Keys[1] == 0) yield return "it sits in the set-up, before the swing begins";
        yield return Keys[2] == 0 ? "nothing has to be trained before it" : $"{Keys[2]} other thing{(Keys[2] == 1 ? "" : "s")} must be trained before it";
        yield return $"its reach counts {-Keys[3]}: itself, what hangs on it, and how it serves the student's goals";
        yield return $"it belongs to the moment \"{MeasureWords.Of((Moment)Math.Clamp(Keys[4], 0, 7)).ToLowerInvariant()}\"";
        yield return $"it is {Grade(-Keys[5])}, {Steps} steps beyond the band";
    }

    /// <summary>Why another candidate stands behind this one: the first key in which they differ.</summary>
    public string Against(OrderLine other)
    {
        ArgumentNullException.ThrowIfNull(other);
        var first = Enumerable.Range(0, Math.Min(Keys.Count, other.Keys.Count)).FirstOrDefault(k => Keys[k] != other.Keys[k], -1);
        return first switch
        {
            0 => "comfort comes before it",
            1 => "the set-up comes before it",
            2 => $"it waits for {other.Keys[2]} other thing{(other.Keys[2] == 1 ? "" : "s")}, against {Keys[2]}",
            3 => $"its reach counts {-other.Keys[3]}, against {-Keys[3]}",
            4 => "it belongs to a later moment",
            5 => $"it is {Grade(-other.Keys[5])}, against {Grade(-Keys[5])}",
            6 => $"it lies {other.Steps} steps out, against {Steps}",
            _ => "it stands later in the book's list of measures",
        };
    }

    private string Steps => (-Keys[6] / 100.0).ToString("0.##", CultureInfo.InvariantCulture);

    private static string Grade(int weight) => weight switch { 1 => "mild", 2 => "moderate", 3 => "marked", _ => "slight" };

    private static OrderLine? Read(string fact)
    {
        var fault = FaultId.Find(fact.Split(' ')[0]);
        var keys = Key().Matches(fact).Select(m => int.Parse(m.Groups["value"].Value, CultureInfo.InvariantCulture)).ToList();
        return fault is { } id && keys.Count == 8 ? new OrderLine(id, keys) : null;
    }

    [GeneratedRegex(@"\bk\d=(?<value>-?\d+)", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Key();
}
