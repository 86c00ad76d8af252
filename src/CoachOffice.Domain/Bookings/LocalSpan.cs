using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A half-open span of local time in a zone.</summary>
public sealed record LocalSpan(LocalDateTime From, LocalDateTime Until, DateTimeZone Zone)
{
    /// <summary>Its instants, each end read as <see cref="LocalTimes"/> does.</summary>
    public Interval Resolve() => new(LocalTimes.At(From, Zone), LocalTimes.At(Until, Zone));
}
