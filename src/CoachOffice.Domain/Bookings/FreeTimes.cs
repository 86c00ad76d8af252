using NodaTime;

namespace CoachOffice.Domain.Bookings;

/// <summary>
/// At which times a lesson can begin. Every obstacle is turned into the starts it rules out, and these are taken from the coach's hours: what is left
/// are the starts that are free. A lesson lies within the hours; it may begin where another ends, after the way from another place.
/// </summary>
public static class FreeTimes
{
    /// <summary>In order of time.</summary>
    public static IReadOnlyList<FreeTime> In(Diary diary, FreeTimeWish wish)
    {
        ArgumentNullException.ThrowIfNull(diary);
        ArgumentNullException.ThrowIfNull(wish);
        var taken = diary.Taken.ToLookup(t => t.Coach);
        return [.. diary.Open.SelectMany(open => At(open, diary with { Taken = Near(taken[open.Coach], open, wish) }, wish)).OrderBy(t => t.Starts).ThenBy(t => t.Coach.Value).ThenBy(t => t.Place.Value)];
    }

    // What lies further away than the longest way and the lesson rules nothing out: of a coach's month that is nearly everything.
    private static List<CoachTaken> Near(IEnumerable<CoachTaken> taken, OpenTime open, FreeTimeWish wish)
    {
        var reach = Duration.FromMinutes(Travel.LongestMinutes) + wish.CoachLength;
        var (from, until) = (open.Time.Start - reach, open.Time.End + reach);
        return [.. taken.Where(t => t.Time.Start < until && t.Time.End > from)];
    }

    private static IEnumerable<FreeTime> At(OpenTime open, Diary diary, FreeTimeWish wish)
    {
        var (first, last) = (Instant.Max(open.Time.Start, wish.Starts.Start), open.Time.End - wish.Length);
        var end = Instant.Min(last + Duration.Epsilon, wish.Starts.End);
        if (first >= end) yield break;
        var near = new Interval(first, last + wish.Length);
        var bays = diary.Bays?.Where(b => b.Place == open.Place).Select(b => b.Taken.Where(t => t.Overlaps(near)).ToList()).ToList();
        var starts = new Interval(first, end);
        foreach (var start in starts.Minus(RuledOut(open, diary, wish).Where(r => r.Overlaps(starts))).SelectMany(free => Begins(free, wish)))
        {
            var lesson = new Interval(start.ToInstant(), start.ToInstant() + wish.Length);
            if (bays is null || bays.Exists(taken => !taken.Exists(t => t.Overlaps(lesson)))) yield return new FreeTime(open.Coach, open.Place, start.LocalDateTime, lesson.Start);
        }
    }

    private static IEnumerable<Interval> RuledOut(OpenTime open, Diary diary, FreeTimeWish wish)
    {
        foreach (var taken in diary.Taken)
        {
            var way = diary.Way(open.Place, taken.Place);
            yield return Before(taken.Time.Start - way, wish.CoachLength, taken.Time.End + way);
        }

        foreach (var taken in diary.Student) yield return Before(taken.Start, wish.Length, taken.End);
    }

    /// <summary>Starts of something of a length that would reach into a time: later than the length before it. Just that much before is allowed.</summary>
    private static Interval Before(Instant start, Duration length, Instant end) => new(start - length + Duration.Epsilon, end);

    /// <summary>
    /// Multiples of the step in the local hour. Between two changes of the clock they are evenly apart; a local time that comes a second time is left
    /// out, since a booking is kept by its local time, which means the first.
    /// </summary>
    private static IEnumerable<ZonedDateTime> Begins(Interval free, FreeTimeWish wish)
    {
        var step = Duration.FromMinutes(wish.StepMinutes);
        foreach (var period in wish.Zone.GetZoneIntervals(free))
        {
            var from = period.HasStart ? Instant.Max(free.Start, period.Start) : free.Start;
            var until = period.HasEnd ? Instant.Min(free.End, period.End) : free.End;
            var past = Duration.FromNanoseconds(from.InZone(wish.Zone).NanosecondOfDay % step.ToInt64Nanoseconds());
            for (var at = past == Duration.Zero ? from : from + step - past; at < until; at += step)
            {
                var start = at.InZone(wish.Zone);
                if (LocalTimes.At(start.LocalDateTime, wish.Zone) == at) yield return start;
            }
        }
    }
}
