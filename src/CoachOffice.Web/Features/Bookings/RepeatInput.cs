using System.Globalization;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>How a lesson is repeated, as typed.</summary>
public sealed class RepeatInput
{
    /// <summary>Empty: once. A number of weeks, or "month" for the same weekday of each month.</summary>
    public string? Every { get; set; }

    public string? Times { get; set; }

    public bool SkipTaken { get; set; }

    internal static (string Value, string Text)[] Choices { get; } = [("", "once"), ("1", "every week"), ("2", "every second week"), ("4", "every fourth week"), ("month", "each month, on the same weekday")];

    /// <summary>RFC 5545 RRULE, or null for once. What is no number gives a rule nobody can follow, which the operation refuses in words.</summary>
    internal string? Rule(LocalDateTime start)
    {
        if (string.IsNullOrEmpty(Every)) return null;
        var count = int.TryParse(Times, NumberStyles.None, CultureInfo.InvariantCulture, out var read) && read is > 0 and < 1000 ? read : 1;
        if (Every == "month") return $"FREQ=MONTHLY;BYDAY={((start.Day - 1) / 7) + 1}{Day(start.DayOfWeek)};COUNT={count}";
        return $"FREQ=WEEKLY;INTERVAL={(Every is "2" or "4" ? Every : "1")};COUNT={count}";
    }

    private static string Day(IsoDayOfWeek day) => day.ToString()[..2].ToUpperInvariant();
}
