using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>
/// Which instant a local time means. RFC 5545 section 3.3.5: a time that comes twice is the first, one that does not exist is read with the offset
/// before the gap (02:30 becomes 03:30). Its section 3.3.10 also says that instances at a time that does not exist are to be ignored; a lesson is
/// never dropped silently here, so 3.3.5 holds for series too. Noda Time's lenient resolver does the same.
/// </summary>
public static class LocalTimes
{
    /// <summary>The instant.</summary>
    public static Instant At(LocalDateTime local, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(zone);
        return local.InZoneLeniently(zone).ToInstant();
    }
}
