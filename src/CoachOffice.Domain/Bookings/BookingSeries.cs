using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A row of bookings made by one rule. The bookings are rows of their own; the rule stays for the calendar's text and for what people read.</summary>
public sealed class BookingSeries
{
    private BookingSeries()
    {
    }

    public SeriesId Id { get; private set; }

    /// <summary>RFC 5545 RRULE value, with COUNT or UNTIL.</summary>
    public string Rule { get; private set; } = "";

    public LocalDateTime FirstStart { get; private set; }

    /// <summary>IANA zone id.</summary>
    public string Zone { get; private set; } = "";

    public Instant CreatedAt { get; private set; }

    /// <summary>A new series.</summary>
    public static BookingSeries Of(SeriesId id, string rule, LocalDateTime firstStart, string zone, Instant now) =>
        new() { Id = id, Rule = rule, FirstStart = firstStart, Zone = zone, CreatedAt = now };
}
