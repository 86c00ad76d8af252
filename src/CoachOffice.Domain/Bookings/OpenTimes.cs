using CoachOffice.Domain.Access;
using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>
/// When a coach is at work and where: the weekly hours, without what is closed (for the coach or the practice), and what the coach opened beyond them.
/// An opening holds also while the practice is closed, as it was said for that very time. Hours are local; instants follow from the zone, so that nine
/// o'clock stays nine o'clock when clocks change.
/// </summary>
public static class OpenTimes
{
    /// <summary>All of some days, in order; hours that touch or overlap at one place are one time.</summary>
    public static IReadOnlyList<OpenTime> Of(AccountId coach, HoursBook book, DateInterval days, DateTimeZone zone)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(days);
        ArgumentNullException.ThrowIfNull(zone);
        var all = new Interval(LocalTimes.At(days.Start.AtMidnight(), zone), LocalTimes.At(days.End.PlusDays(1).AtMidnight(), zone));
        var exceptions = book.Exceptions.Where(e => e.CoachId is null || e.CoachId == coach).ToLookup(e => e.OpenAt);
        var closed = exceptions[null].SelectMany(e => Real(e.LocalFrom, e.LocalUntil, zone)).ToList();
        var weekly =
            from hours in book.Weekly
            where hours.CoachId == coach
            from day in days
            where hours.HoldsOn(day)
            from time in On(day, hours, zone)
            from left in time.Minus(closed)
            select (hours.PlaceId, Time: left);
        var opened =
            from place in exceptions
            where place.Key is not null
            from opening in place
            from time in Real(opening.LocalFrom, opening.LocalUntil, zone)
            select (PlaceId: place.Key!.Value, Time: time);
        return
        [
            .. weekly.Concat(opened).Where(t => t.Time.Overlaps(all)).GroupBy(t => t.PlaceId)
                .SelectMany(place => HalfOpen.Joined(place.Select(t => Clipped(t.Time, all))), (place, time) => new OpenTime(coach, place.Key, time))
                .OrderBy(t => t.Time.Start).ThenBy(t => t.Place.Value),
        ];
    }

    /// <summary>Hours of one day; midnight as an end is the end of that day.</summary>
    private static IEnumerable<Interval> On(LocalDate day, WeeklyHours hours, DateTimeZone zone) =>
        Real(day + hours.From, hours.Until == LocalTime.Midnight ? day.PlusDays(1).AtMidnight() : day + hours.Until, zone);

    /// <summary>Nothing where the clocks jump over its end: 01:30 to 02:15 in a night without 01:00 to 02:00.</summary>
    private static IEnumerable<Interval> Real(LocalDateTime from, LocalDateTime until, DateTimeZone zone)
    {
        var (start, end) = (LocalTimes.At(from, zone), LocalTimes.At(until, zone));
        if (start < end) yield return new Interval(start, end);
    }

    private static Interval Clipped(Interval time, Interval within) => new(Instant.Max(time.Start, within.Start), Instant.Min(time.End, within.End));
}
