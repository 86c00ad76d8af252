using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>A time at which the weekly hours do not hold: closed, or open beyond them. Of one coach, or of the whole practice.</summary>
public sealed class HoursException
{
    private HoursException()
    {
    }

    public Guid Id { get; private set; }

    /// <summary>Null: the whole practice is closed.</summary>
    public AccountId? CoachId { get; private set; }

    /// <summary>Where the coach teaches then; null when closed.</summary>
    public PlaceId? OpenAt { get; private set; }

    /// <summary>Local time of the practice.</summary>
    public LocalDateTime LocalFrom { get; private set; }

    public LocalDateTime LocalUntil { get; private set; }

    /// <summary>Derived from the local time in the practice's zone.</summary>
    public Instant From { get; private set; }

    public Instant Until { get; private set; }

    /// <summary>Why, for the office alone.</summary>
    public string Note { get; private set; } = "";

    /// <summary>A closed time.</summary>
    public static HoursException Closed(Guid id, AccountId? coach, LocalSpan span, string note) => Of(id, coach, null, span, note);

    /// <summary>A time at which a coach teaches beyond the weekly hours.</summary>
    public static HoursException Open(Guid id, AccountId coach, PlaceId place, LocalSpan span, string note) => Of(id, coach, place, span, note);

    private static HoursException Of(Guid id, AccountId? coach, PlaceId? place, LocalSpan span, string note)
    {
        ArgumentNullException.ThrowIfNull(span);
        ArgumentNullException.ThrowIfNull(note);
        var times = span.Resolve();
        return new HoursException { Id = id, CoachId = coach, OpenAt = place, LocalFrom = span.From, LocalUntil = span.Until, From = times.Start, Until = times.End, Note = note.Trim() };
    }
}
