using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings;

/// <summary>Whether a coach is at work at a place then: staff may book outside the hours, and are told so.</summary>
public sealed class AtWork(CoachHours hours, PracticeClock clock)
{
    /// <summary>Of a lesson from its start to its end, without the buffer.</summary>
    public async Task<WorkThen> Of(AccountId coach, PlaceId place, Interval lesson, CancellationToken stop = default)
    {
        var zone = await clock.Zone(stop);
        var days = new DateInterval(lesson.Start.InZone(zone).Date, lesson.End.InZone(zone).Date);
        return In(await hours.Of([coach], days, stop), place, lesson);
    }

    /// <summary>The same against open times that are at hand.</summary>
    public static WorkThen In(IReadOnlyList<OpenTime> open, PlaceId place, Interval lesson)
    {
        ArgumentNullException.ThrowIfNull(open);
        if (open.Any(o => o.Place == place && o.Time.Covers(lesson))) return WorkThen.Here;
        return open.Any(o => o.Place != place && o.Time.Overlaps(lesson)) ? WorkThen.Elsewhere : WorkThen.Off;
    }
}
