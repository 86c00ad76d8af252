using System.Collections;
using System.Reflection;
using System.Text.RegularExpressions;
using CoachOffice.Domain.FollowUps;

namespace CoachOffice.UseCases.FollowUps.Wordings;

/// <summary>What a letter of a kind may name, and what it may not go out without.</summary>
public static partial class LetterParts
{
    /// <summary>Names a template of the kind knows, with what the example holds for them, for the page where words are edited.</summary>
    public static IReadOnlyList<LetterPart> Known(MessageKind kind)
    {
        var facts = LetterExamples.Of(kind)[0].Facts;
        var needed = Needed(kind);
        return [.. facts.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.Name != "EqualityContract")
            .Select(p => new LetterPart(Snake(p.Name), Shown(p.GetValue(facts)), p.GetValue(facts) is IEnumerable and not string, needed.Contains(Snake(p.Name))))
            .OrderByDescending(p => p.IsNeeded).ThenBy(p => p.Name, StringComparer.Ordinal)];
    }

    /// <summary>Names without which the letter would not do what it is for. The closing with cautions, emergency number and the way to stop is the program's own and always there.</summary>
    public static IReadOnlyList<string> Needed(MessageKind kind) => kind switch
    {
        MessageKind.PlanDelivery or MessageKind.PracticeNudge or MessageKind.WeeklyCheckIn or MessageKind.MorningList => ["link"],
        MessageKind.RetestPrompt or MessageKind.SecondLook => ["measures", "link"],
        MessageKind.BookingInvitation => ["what", "when", "where", "coach", "link"],
        MessageKind.BookingCancelled => ["what", "when", "link"],
        MessageKind.WaitingOffer => ["when", "until", "link"],
        MessageKind.LessonReminder => ["when", "coming_link", "cancel_link"],
        MessageKind.Receipt => ["number", "total", "lines", "from"],
        MessageKind.Statement => ["number", "balance", "lines", "from"],
        MessageKind.PackageEnding => ["package", "link"],
        MessageKind.PaymentDue => ["amount", "lines", "from"],
        _ => ["promised", "link"],
    };

    /// <summary>The example's value of a name, one text for each entry of a list.</summary>
    public static IReadOnlyList<string> Values(object facts, string name)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var value = facts.GetType().GetProperties().Single(p => Snake(p.Name) == name).GetValue(facts);
        return value is string text ? [text] : value is IEnumerable<string> lines ? [.. lines] : [value?.ToString() ?? ""];
    }

    private static string Shown(object? value) => value switch
    {
        string text => text.Length == 0 ? "(empty)" : text,
        IEnumerable<string> lines => string.Join(" / ", lines),
        true => "yes",
        false => "no",
        _ => value?.ToString() ?? "",
    };

    private static string Snake(string name) => Humps().Replace(name, "_${hump}").ToLowerInvariant();

    [GeneratedRegex("(?<=[a-z0-9])(?<hump>[A-Z])", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Humps();
}

/// <summary>One name a template knows.</summary>
/// <param name="Name">As written in a template.</param>
/// <param name="Example">What it holds in the example.</param>
/// <param name="IsList">It is gone through with a loop.</param>
/// <param name="IsNeeded">A letter without it is refused.</param>
public sealed record LetterPart(string Name, string Example, bool IsList, bool IsNeeded);
