using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>When a lesson is: the local time is what was agreed, the instants follow from it and from the zone's rules.</summary>
/// <param name="LocalStart">Wall clock at the place.</param>
/// <param name="Zone">IANA zone id.</param>
/// <param name="Minutes">Length, in exact minutes.</param>
/// <param name="BufferMinutes">Minutes the coach keeps free afterwards.</param>
public sealed record BookedTime(LocalDateTime LocalStart, string Zone, int Minutes, int BufferMinutes)
{
    /// <summary>Start of the lesson.</summary>
    public Instant Starts => LocalTimes.At(LocalStart, DateTimeZoneProviders.Tzdb[Zone]);

    /// <summary>End of the lesson, exclusive.</summary>
    public Instant Ends => Starts + Duration.FromMinutes(Minutes);

    /// <summary>End of the coach's time, exclusive.</summary>
    public Instant BusyUntil => Ends + Duration.FromMinutes(BufferMinutes);
}
