using NodaTime;

namespace CoachOffice.UseCases.Safekeeping;

/// <summary>Since when a backup is due.</summary>
internal static class BackupHours
{
    /// <summary>The latest moment at which the practice's clock stood at that hour. An office that was closed then makes up for it.</summary>
    public static Instant Latest(int hour, Instant now, DateTimeZone zone)
    {
        var today = now.InZone(zone).Date;
        var at = At(today, hour, zone);
        return at <= now ? at : At(today.PlusDays(-1), hour, zone);
    }

    private static Instant At(LocalDate day, int hour, DateTimeZone zone) => zone.AtLeniently(day.At(new LocalTime(Math.Clamp(hour, 0, 23), 0))).ToInstant();
}
