using System.Globalization;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Words;

/// <summary>Sentences about readings. They describe the reading, never the person, and say "may", not "must".</summary>
internal static class Sentences
{
    /// <summary>The measure's name as a sentence begins.</summary>
    public static string NameOf(Finding finding) => finding.Measure.Name;

    /// <summary>E.g. "14 deg away from the target, wanted 20 to 28 away from the target".</summary>
    public static string Reading(Finding finding) => $"{Signs.Value(finding.Measure, finding.Value.Value)}, {Signs.Wanted(finding.Measure, finding.Range)}";

    /// <summary>Why a fault without a standing pattern is worked on.</summary>
    public static string OnItsOwn(Finding finding) =>
        $"{finding.Measure.Name} reads {Reading(finding)}; nothing else that was read explains it, so it may be worked on by itself.";

    /// <summary>Why a fault is worked on although its cause may lie in what nobody read.</summary>
    public static string Provisional(Finding finding, Measure decides) =>
        $"Provisional: {LowerFirst(finding.Measure.Name)} reads {Reading(finding)}; what is behind it may show once {LowerFirst(decides.Name)} is read, so the work stays slow until then.";

    /// <summary>A number as a person reads it: invariant, at most two decimals.</summary>
    public static string Number(double value) => Math.Round((decimal)value, 2, MidpointRounding.AwayFromZero).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>For the middle of a sentence.</summary>
    public static string LowerFirst(string name) => name.Length > 1 && char.IsUpper(name[1]) ? name : Begun(char.ToLowerInvariant(name[0]), name);

    /// <summary>For the beginning of a sentence.</summary>
    public static string UpperFirst(string text) => text.Length == 0 ? text : Begun(char.ToUpperInvariant(text[0]), text);

    private static string Begun(char first, string text) => text[0] == first ? text : string.Concat([first], text.AsSpan(1));

    /// <summary>One, two and three as a person lists them.</summary>
    public static string Listed(IReadOnlyList<string> words) => words.Count < 2 ? string.Concat(words) : $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}";
}
