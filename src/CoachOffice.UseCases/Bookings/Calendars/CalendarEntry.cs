using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars;

/// <summary>One VEVENT to be: a booking, a row of bookings, or one of a row that is otherwise than its rule says.</summary>
public sealed record CalendarEntry
{
    /// <summary>Never changes for the same booking or row.</summary>
    public required string Uid { get; init; }

    /// <summary>Wall clock in the zone.</summary>
    public required LocalDateTime Start { get; init; }

    /// <summary>IANA zone id.</summary>
    public required string Zone { get; init; }

    /// <summary>Exact minutes: written as a duration, which no clock change stretches.</summary>
    public required int Minutes { get; init; }

    public required string Summary { get; init; }

    public string Location { get; init; } = "";

    public string Description { get; init; } = "";

    /// <summary>Revision (RFC 5545 3.8.7.4).</summary>
    public required int Sequence { get; init; }

    public EntryState State { get; init; }

    /// <summary>Of a row: its RRULE.</summary>
    public string? Rule { get; init; }

    /// <summary>Of a row: starts its rule gives that do not take place.</summary>
    public IReadOnlyList<LocalDateTime> Without { get; init; } = [];

    /// <summary>Of one of a row: the start its rule gives it (RECURRENCE-ID).</summary>
    public LocalDateTime? Instead { get; init; }
}

/// <summary>Whether something takes place.</summary>
public enum EntryState
{
    Confirmed,
    Tentative,
    Cancelled,
}
