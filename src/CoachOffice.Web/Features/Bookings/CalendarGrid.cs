using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings;
using CoachOffice.Web.Shell.Wording;
using NodaTime;

namespace CoachOffice.Web.Features.Bookings;

/// <summary>Puts bookings into columns of quarters of an hour, those that overlap side by side.</summary>
internal sealed class CalendarGrid
{
    private const int MostLanes = 6;
    private readonly CalendarView _view;

    public CalendarGrid(CalendarView view, bool byCoach)
    {
        _view = view;
        var days = Enumerable.Range(0, view.Wish.Days).Select(n => view.Wish.First.PlusDays(n)).ToList();
        (FirstHour, LastHour) = Hours(days);
        Columns = byCoach
            ? [.. view.Coaches.Select(c => Column(c.Name, days[0], c))]
            : [.. days.Select(d => Column(DayEntry.Short(d), d, null))];
    }

    public IReadOnlyList<CalendarColumn> Columns { get; }

    public int FirstHour { get; }

    /// <summary>Exclusive.</summary>
    public int LastHour { get; }

    // From seven to eight in the evening, and as far beyond as there are lessons.
    private (int First, int Last) Hours(IReadOnlyList<LocalDate> days)
    {
        var (first, last) = (7, 20);
        foreach (var booking in _view.Bookings)
        {
            var (from, until) = (booking.Starts.InZone(_view.Zone), booking.Ends.InZone(_view.Zone));
            if (days.Contains(from.Date)) first = Math.Min(first, from.Hour);
            last = until.Date > from.Date ? 24 : Math.Max(last, until.Hour + (until.Minute > 0 ? 1 : 0));
        }

        return (first, last);
    }

    private CalendarColumn Column(string heading, LocalDate day, CoachName? coach)
    {
        var mine = _view.Bookings.Where(b => b.Starts.InZone(_view.Zone).Date == day && (coach is null || b.CoachId == coach.Id)).ToList();
        var lanes = Lanes.Of([.. mine.Select(b => b.Time)]);
        return new CalendarColumn(heading, day, coach?.Id, [.. mine.Select((b, n) => Item(b, lanes[n]))], [.. Shades(day, coach)]);
    }

    private CalendarItem Item(CalendarBooking booking, Lane lane)
    {
        var (row, rows) = Rows(booking.Starts.InZone(_view.Zone).LocalDateTime, booking.Ends.InZone(_view.Zone).LocalDateTime);
        var count = Math.Min(lane.Count, MostLanes);
        return new CalendarItem(booking, row, rows, new Lane(Math.Min(lane.Index, count - 1), count));
    }

    private IEnumerable<ShadeItem> Shades(LocalDate day, CoachName? coach)
    {
        foreach (var shade in _view.Shades.Where(s => s.Coach is null || (coach?.Id ?? _view.Wish.Coach) == s.Coach))
        {
            var (from, until) = (shade.Time.Start.InZone(_view.Zone).LocalDateTime, shade.Time.End.InZone(_view.Zone).LocalDateTime);
            var (first, last) = (day.At(new LocalTime(FirstHour, 0)), LastHour == 24 ? day.PlusDays(1).AtMidnight() : day.At(new LocalTime(LastHour, 0)));
            if (until <= first || from >= last) continue;
            var (row, rows) = Rows(LocalDateTime.Max(from, first), LocalDateTime.Min(until, last));
            yield return new ShadeItem(shade.Why, row, rows);
        }
    }

    private (int Row, int Rows) Rows(LocalDateTime from, LocalDateTime until)
    {
        var most = (LastHour - FirstHour) * 4;
        var row = Math.Clamp(((from.Hour - FirstHour) * 4) + (from.Minute / 15), 0, most - 1);
        var minutes = (int)Period.Between(from.Date.At(new LocalTime(from.Hour, from.Minute / 15 * 15)), until, PeriodUnits.Minutes).Minutes;
        return (row, Math.Clamp((minutes + 14) / 15, 1, most - row));
    }
}
