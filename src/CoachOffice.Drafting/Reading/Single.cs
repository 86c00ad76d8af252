using System.Globalization;
using System.Text.RegularExpressions;
using CoachOffice.Domain;
using CoachOffice.Domain.Measuring;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading;

/// <summary>Reads one value of a kind; says what is wrong and gives a harmless stand-in, so that a reading can go on to the next fault.</summary>
internal static partial class Single
{
    /// <summary>A text with something in it.</summary>
    public static string Text(Node node, FaultList faults)
    {
        if (node is ScalarNode { Scalar: ScalarKind.Text } text && !string.IsNullOrWhiteSpace(text.Text)) return text.Text.Trim();
        var hint = node is ScalarNode { Scalar: ScalarKind.Number or ScalarKind.Flag } ? " (put it in quotes)" : "";
        return Wrong(node, $"a text is expected, not {node.Kind}{hint}", "?", faults);
    }

    /// <summary>A finite number.</summary>
    public static double Number(Node node, FaultList faults)
    {
        if (node is not ScalarNode { Scalar: ScalarKind.Number } number) return Wrong(node, $"a number is expected, not {node.Kind}", 0, faults);
        var value = double.Parse(number.Text, NumberStyles.Float, CultureInfo.InvariantCulture);
        return double.IsFinite(value) ? value : Wrong(node, "this number is too large to be one", 0, faults);
    }

    /// <summary>A whole number between two bounds, inclusive.</summary>
    public static int Whole(Node node, int least, int most, FaultList faults)
    {
        var before = faults.Count;
        var value = Number(node, faults);
        if (faults.Count > before) return least;
        if (value == Math.Truncate(value) && value >= least && value <= most) return (int)value;
        return Wrong(node, $"a whole number from {least} to {most} is expected, not {((ScalarNode)node).Text}", least, faults);
    }

    /// <summary>true or false.</summary>
    public static bool Flag(Node node, FaultList faults) =>
        node is ScalarNode { Scalar: ScalarKind.Flag } flag ? flag.Text == "true" : Wrong(node, $"true or false is expected, not {node.Kind}", false, faults);

    /// <summary>A word of a closed list.</summary>
    public static T Word<T>(Node node, FaultList faults)
        where T : struct, Enum
    {
        var word = node is ScalarNode scalar ? scalar.Text : null;
        if (Terms.TryParse<T>(word, out var member)) return member;
        return Wrong(node, $"{(word is null ? node.Kind : Words.Quote(word))} is not one of the words here{Words.Right(word ?? "", Terms.All<T>())}", default(T), faults);
    }

    /// <summary>A unit of the table.</summary>
    public static Unit UnitOf(Node node, FaultList faults)
    {
        var symbol = node is ScalarNode scalar ? scalar.Text : null;
        if (Unit.Find(symbol) is { } unit) return unit;
        return Wrong(node, $"{(symbol is null ? node.Kind : Words.Quote(symbol))} is no unit{Words.Right(symbol ?? "", Unit.All.Select(u => u.Symbol))}", Unit.Ratio, faults);
    }

    /// <summary>A new id: lower-case words joined by hyphens.</summary>
    public static string NewId(Node node, FaultList faults)
    {
        var before = faults.Count;
        var id = Text(node, faults);
        if (faults.Count > before || Kebab().IsMatch(id)) return id;
        return Wrong(node, $"{Words.Quote(id)} is no id; write lower-case words joined by hyphens, e.g. impact-spine-tilt", "?", faults);
    }

    /// <summary>Two ends in order; either may be null where open ends are allowed.</summary>
    public static Limits Pair(Node node, FaultList faults)
    {
        if (node is not ListNode { Items: [var low, var high] }) return Wrong(node, $"a pair [low, high] is expected, not {node.Kind}", Open, faults);
        var before = faults.Count;
        var pair = new Limits(End(low, faults), End(high, faults));
        if (faults.Count > before) return Open;
        if (pair is { Low: null, High: null }) return Wrong(node, "both ends are open; write at least one", Open, faults);
        return pair.Low > pair.High ? Wrong(node, $"the low end {Show(pair.Low)} is above the high end {Show(pair.High)}; swap them", Open, faults) : pair;
    }

    /// <summary>A number as a person wrote it, shortest form.</summary>
    public static string Show(double? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "open";

    /// <summary>Limits for a message.</summary>
    public static string Show(Limits limits) => $"{Show(limits.Low)} to {Show(limits.High)}";

    private static Limits Open { get; } = new(null, null);

    private static double? End(Node node, FaultList faults) => node is ScalarNode { Scalar: ScalarKind.Nothing } ? null : Number(node, faults);

    private static T Wrong<T>(Node node, string message, T standIn, FaultList faults)
    {
        faults.Add(node, message);
        return standIn;
    }

    [GeneratedRegex("^[a-z][a-z0-9]*(-[a-z0-9]+)*$", RegexOptions.ExplicitCapture | RegexOptions.NonBacktracking)]
    private static partial Regex Kebab();
}
