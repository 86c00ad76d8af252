using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>What a field holds, once or twice, as sentences.</summary>
internal static class FieldWords
{
    /// <summary>What a new entry says of it; nothing when it says nothing.</summary>
    public static IEnumerable<string> New(string label, IReadOnlyList<string> now) => now.Count == 0 ? [] : [$"{MeasureWords.Capital(label)}: {string.Join("; ", now)}"];

    /// <summary>A text, number or choice that becomes another.</summary>
    public static IEnumerable<string> Other(string label, IReadOnlyList<string> old, IReadOnlyList<string> now)
    {
        if (old.SequenceEqual(now, StringComparer.Ordinal)) return [];
        var (was, becomes) = (Quoted(old), Quoted(now));
        return [$"{MeasureWords.Capital(label)}: {(old.Count == 0 ? $"now {becomes}, nothing before" : now.Count == 0 ? $"was {was}, now nothing" : $"was {was}, now {becomes}")}"];
    }

    /// <summary>A list in which things come, go and move.</summary>
    /// <param name="label">The list's name.</param>
    /// <param name="old">What it held.</param>
    /// <param name="now">What it holds.</param>
    /// <param name="places">Also says at which place something new stands.</param>
    public static IEnumerable<string> Listed(string label, IReadOnlyList<string> old, IReadOnlyList<string> now, bool places)
    {
        if (old.SequenceEqual(now, StringComparer.Ordinal)) return [];
        var (come, gone) = (now.Except(old, StringComparer.Ordinal).ToList(), old.Except(now, StringComparer.Ordinal).ToList());
        var parts = (come, gone) is ([var one], [var other]) ? [$"\"{one}\"{At(one)} in place of \"{other}\""] : come.Select(text => $"added \"{text}\"{At(text)}").Concat(gone.Select(text => $"taken out \"{text}\"")).ToList();
        return [$"{MeasureWords.Capital(label)}: {(parts.Count == 0 ? "in another order" : string.Join("; ", parts))}"];

        string At(string text) => places ? $" as number {Place(now, text)} of {now.Count}" : "";
    }

    private static int Place(IReadOnlyList<string> list, string text) => list.TakeWhile(other => other != text).Count() + 1;

    private static string Quoted(IReadOnlyList<string> texts) => texts is [var only] && double.TryParse(only, System.Globalization.CultureInfo.InvariantCulture, out _) ? only : string.Join(", ", texts.Select(text => $"\"{text}\""));
}
