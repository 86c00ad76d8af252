using NodaTime;
using NodaTime.TimeZones;

namespace CoachOffice.UseCases.Bookings.Calendars;

/// <summary>One change of a zone's clocks, as a rule might say it.</summary>
/// <param name="At">On the clock before the change.</param>
/// <param name="To">The offset after it.</param>
internal sealed record YearlyChange(LocalDateTime At, Offset To)
{
    public int Year => At.Year;

    /// <summary>E.g. the second Sunday in March at 2:00.</summary>
    public object FromStart => (To, At.Month, At.TimeOfDay, At.DayOfWeek, (At.Day - 1) / 7);

    /// <summary>E.g. the last Sunday in October at 2:00.</summary>
    public object FromEnd => (To, At.Month, At.TimeOfDay, At.DayOfWeek, (At.Calendar.GetDaysInMonth(At.Year, At.Month) - At.Day) / 7);

    public static YearlyChange Of(ZoneInterval change, ZoneInterval before) => new(change.Start.WithOffset(before.WallOffset).LocalDateTime, change.WallOffset);
}
