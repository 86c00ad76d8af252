using System.Text.RegularExpressions;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>
/// Cuts the events out of a calendar's text, each in a calendar of its own: one that cannot be read then costs itself only. Zones are known by name
/// and need no rules from the file.
/// </summary>
internal static partial class EventTexts
{
    /// <summary>True when the text is a calendar at all (RFC 5545 3.4), whatever the file is called.</summary>
    public static bool IsCalendar(string text) => text.TrimStart('\uFEFF', ' ', '\r', '\n', '\t').StartsWith("BEGIN:VCALENDAR", StringComparison.OrdinalIgnoreCase);

    public static IEnumerable<string> Of(string text)
    {
        List<string>? open = null;
        foreach (var line in text.ReplaceLineEndings("\n").Split('\n'))
        {
            if (line.Equals("BEGIN:VEVENT", StringComparison.OrdinalIgnoreCase)) open = [];
            open?.Add(line);
            if (open is null || !line.Equals("END:VEVENT", StringComparison.OrdinalIgnoreCase)) continue;
            yield return $"BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//x//x//EN\r\n{LeapSecond().Replace(string.Join("\r\n", open), "${minute}59")}\r\nEND:VCALENDAR\r\n";
            open = null;
        }
    }

    // A second 60 is right to write (RFC 5545 3.3.12) and read here as 59.
    [GeneratedRegex("(?<minute>T[0-9]{4})60", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex LeapSecond();
}
