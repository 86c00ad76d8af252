using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Own;

/// <summary>A file that holds one entry as somebody typed it alone, so that its faults can be told in the typed text's own lines and columns.</summary>
public static class OwnFile
{
    private const string Indent = "    ";
    private const string Dash = "  - ";

    /// <summary>The file's text.</summary>
    /// <param name="kind">The kind of entry.</param>
    /// <param name="typed">The entry without dash and indent.</param>
    public static string Of(EntryKind kind, string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        var lines = typed.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n');
        if (kind == EntryKind.Name) return typed;
        var first = kind == EntryKind.Dosage ? Indent : Dash;
        return $"{EntryLists.NameOf(kind)}:\n{string.Join("\n", lines.Select((line, i) => (i == 0 ? first : Indent) + line))}\n";
    }

    /// <summary>Which entry a typed text is; null when it does not say so in a way that can be read.</summary>
    public static EntryId? IdIn(EntryKind kind, string typed)
    {
        if (kind == EntryKind.Name) return EntryId.Name;
        if (kind == EntryKind.Dosage) return EntryId.Dosage;
        return YamlTree.Read("", Of(kind, typed), new FaultList()) is MapNode map && map.Find(EntryLists.NameOf(kind)) is ListNode { Items: [var only] } ? EntryLists.IdOf(kind, only) : null;
    }

    /// <summary>A fault of such a file as a fault of the typed text.</summary>
    public static Fault InTyped(Fault fault, EntryKind kind)
    {
        ArgumentNullException.ThrowIfNull(fault);
        if (kind == EntryKind.Name) return fault;
        var head = kind == EntryKind.Dosage ? "dosage" : $"{EntryLists.NameOf(kind)}[0]";
        var path = fault.Path == head ? Fault.WholeFile : fault.Path.StartsWith($"{head}.", StringComparison.Ordinal) ? fault.Path[(head.Length + 1)..] : fault.Path;
        return fault with { Line = Math.Max(1, fault.Line - 1), Column = Math.Max(1, fault.Column - Indent.Length), Path = path };
    }
}
