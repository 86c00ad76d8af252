using System.Globalization;
using System.Text.RegularExpressions;
using CoachOffice.Domain;

namespace CoachOffice.UseCases.Lessons;

/// <summary>Reads numbers as people type them: a point or a comma for the decimals, a unit behind the number, several in a row.</summary>
public static partial class NumberEntry
{
    private const string Advice = "write it like 14.5 or 14,5";

    /// <summary>Every number in the text; null where a dash stands for a swing that was not read. Refused as a whole when any part of it is no number. An empty text gives none.</summary>
    public static Outcome<IReadOnlyList<EnteredNumber?>> Parse(string? text)
    {
        var left = (text ?? "").Replace('\u2212', '-').Trim();
        var numbers = new List<EnteredNumber?>();
        while (left.Length > 0)
        {
            if (Gap().Match(left) is { Success: true } gap)
            {
                numbers.Add(null);
                left = left[gap.Length..];
                continue;
            }

            var match = Next().Match(left);
            if (!match.Success) return new Refusal("not-a-number", $"'{Shortened(left)}' is no number; {Advice}.");
            var number = match.Groups["number"].Value.Replace(',', '.');
            if (!double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
                return new Refusal("not-a-number", $"'{Shortened(left)}' is no number; {Advice}.");
            numbers.Add(new EnteredNumber(value, match.Groups["unit"].Success ? Alias(match.Groups["unit"].Value) : null));
            left = left[match.Length..];
        }

        return Outcome<IReadOnlyList<EnteredNumber?>>.Of(numbers);
    }

    /// <summary>One number, or a refusal.</summary>
    public static Outcome<double> One(string? text) =>
        Parse(text).TryGet(out var numbers) && numbers is [{ Unit: null } only]
            ? only.Value
            : new Refusal("not-a-number", $"'{Shortened(text ?? "")}' is not one number; {Advice}.");

    private static string Alias(string unit) => unit switch { "°" or "degrees" => "deg", "percent" => "%", "kmh" => "km/h", "s." => "s", _ => unit };

    private static string Shortened(string text) => text.Length <= 24 ? text : $"{text[..24]}...";

    // A dash by itself.
    [GeneratedRegex(@"^[-\u2013\u2014](?:\s*$|\s*;\s*|\s+)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Gap();

    // A number, perhaps its unit, then the end, white space, or a separator that cannot be a decimal comma.
    [GeneratedRegex(@"^(?<number>[+-]?\d{1,7}(?:[.,]\d{1,9})?)(?:\s?(?<unit>°|%|[a-z][a-z/.]*))?(?:\s*$|\s*;\s*|,\s+|\s+)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Next();
}
