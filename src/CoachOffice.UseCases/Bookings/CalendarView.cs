using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Some days of the calendar.</summary>
public sealed record CalendarView
{
    public required CalendarWish Wish { get; init; }

    public required LocalDate Today { get; init; }

    public required DateTimeZone Zone { get; init; }

    /// <summary>Who teaches, by name.</summary>
    public required IReadOnlyList<CoachName> Coaches { get; init; }

    /// <summary>What takes place, by start.</summary>
    public required IReadOnlyList<CalendarBooking> Bookings { get; init; }

    /// <summary>What a coach is busy with elsewhere, and closed times, by start.</summary>
    public required IReadOnlyList<CalendarShade> Shades { get; init; }

    /// <summary>True while there is nothing to book yet.</summary>
    public required bool HasNoOffering { get; init; }
}
