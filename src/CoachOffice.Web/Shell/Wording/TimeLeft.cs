using NodaTime;

namespace CoachOffice.Web.Shell.Wording;

/// <summary>How long there is until a promise, or since when it is late.</summary>
internal static class TimeLeft
{
    /// <summary>"3 days left", "5 hours left", "2 hours late".</summary>
    public static string Of(Instant promised, Instant now)
    {
        var left = promised - now;
        return left < Duration.Zero ? $"{Length(-left)} late" : $"{Length(left)} left";
    }

    private static string Length(Duration time) =>
        time.TotalHours >= 48 ? $"{(int)time.TotalDays} days" : time.TotalHours >= 1 ? Count((int)time.TotalHours, "hour") : Count(Math.Max(1, (int)time.TotalMinutes), "minute");

    private static string Count(int number, string unit) => number == 1 ? $"1 {unit}" : $"{number} {unit}s";
}
