using System.Globalization;
using CoachOffice.UseCases.Lessons;
using CoachOffice.Web.Shell;

namespace CoachOffice.Web.Features.Rulebook.Editing;

/// <summary>One line of a pattern's conditions as the form asks for it.</summary>
/// <param name="Joins"><c>and</c>, <c>or</c> (with the line above) or <c>with</c> (to the same side as the line above).</param>
/// <param name="What">A measure or pattern, in words.</param>
/// <param name="Is">How it must stand; empty for a condition kept as it was typed.</param>
/// <param name="Strength">Least severity, or empty.</param>
/// <param name="Number">A bound or a count, or empty.</param>
internal sealed record ConditionRow(string Joins, string What, string Is, string Strength, string Number)
{
    public const string SameSide = "same-side";

    /// <summary>What a line can say, with the words of the form.</summary>
    public static IReadOnlyList<(string Value, string Words)> Kinds { get; } =
    [
        ("low", "is low"), ("high", "is high"), ("out", "is off to either side"), ("below", "is below …"), ("above", "is above …"), ("in-range", "is in range"), ("not-in-range", "is not in range"),
        ("measured", "was measured"), ("not-measured", "was not measured"), ("read", "was read from … swings or more"), ("others", "… other values or more are in range"),
        (SameSide, "is off, all to the same side"), ("pattern", "stands (a pattern)"),
    ];

    public bool IsEmpty => What.Trim().Length == 0 && Is != "others";

    /// <summary>The line as a person says it: "Spine tilt at impact is low, marked at least".</summary>
    public string Said
    {
        get
        {
            var words = Kinds.FirstOrDefault(kind => kind.Value == Is).Words ?? "";
            var number = words.Contains('…', StringComparison.Ordinal) ? words.Replace("…", Number, StringComparison.Ordinal) : words;
            return $"{What} {number}{(Strength.Length > 0 ? $", {Strength} at least" : "")}".Trim();
        }
    }

    /// <summary>The line as the files write it.</summary>
    public string Sentence(PickWords words)
    {
        var measure = words.Id(PickKind.Measure, What);
        return Is switch
        {
            "low" or "high" or "out" => $"{measure}.{Is}{(Strength.Length > 0 ? $" at least {Strength}" : "")}",
            "below" or "above" => $"{measure} {Is} {Plain}",
            "in-range" or "not-in-range" or "measured" or "not-measured" => $"{measure} {PlainWords.Of(Is)}",
            "read" => $"{measure} read at least {Plain} times",
            "others" => $"at least {Plain} others in range",
            "pattern" => $"pattern {words.Id(PickKind.Pattern, What)}",
            SameSide => measure,
            _ => What.Trim(),
        };
    }

    /// <summary>The line of the form for what stands in the files.</summary>
    public static ConditionRow Of(string sentence, string joins, PickWords words)
    {
        var parts = sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        ConditionRow Measured(string id, string kind, string strength = "", string number = "") => new(joins, words.Words(PickKind.Measure, id), kind, strength, number);
        return parts switch
        {
            ["at", "least", var count, "others", "in", "range"] => new(joins, "", "others", "", count),
            ["pattern", var id] => new(joins, words.Words(PickKind.Pattern, id), "pattern", "", ""),
            [var id, "below" or "above", var bound] => Measured(id, parts[1], number: bound),
            [var id, "in", "range"] => Measured(id, "in-range"),
            [var id, "not", "in", "range"] => Measured(id, "not-in-range"),
            [var id, "measured"] => Measured(id, "measured"),
            [var id, "not", "measured"] => Measured(id, "not-measured"),
            [var id, "read", "at", "least", var count, "times"] => Measured(id, "read", number: count),
            [var fault] when Side(fault) is { } side => Measured(fault[..^(side.Length + 1)], side),
            [var fault, "at", "least", var grade] when Side(fault) is { } side => Measured(fault[..^(side.Length + 1)], side, grade),
            _ => new(joins, sentence, "", "", ""),
        };
    }

    private string Plain => NumberEntry.One(Number).TryGet(out var number) ? number.ToString(CultureInfo.InvariantCulture) : Number.Trim() is { Length: > 0 } typed ? typed : "?";

    private static string? Side(string fault) => Array.Find(["low", "high", "out"], side => fault.EndsWith($".{side}", StringComparison.Ordinal));
}
