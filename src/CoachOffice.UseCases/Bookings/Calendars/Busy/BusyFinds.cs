using CoachOffice.Domain;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Evaluation;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>Gathers busy times event by event.</summary>
internal sealed class BusyFinds(Interval window, DateTimeZone zone)
{
    // An absence that began some weeks ago still counts.
    private static readonly NodaTime.Duration Before = NodaTime.Duration.FromDays(62);
    private readonly Dictionary<SkipReason, int> _skipped = [];
    private readonly List<Interval> _times = [];
    private int _events;

    public IReadOnlyList<Interval> Times => _times;

    public void Skip(SkipReason reason) => _skipped[reason] = _skipped.GetValueOrDefault(reason) + 1;

    /// <summary>All events of one UID: a row with those that are otherwise, or a single one.</summary>
    public void Add(IReadOnlyList<CalendarEvent> same)
    {
        if (same.Any(e => IsTooOften(e.RecurrenceRule)))
        {
            Skip(SkipReason.TooOften);
            return;
        }

        try
        {
            Take(same);
        }
        catch (Exception fault) when (BusyReader.IsOfTheFile(fault))
        {
            Skip(fault is ArgumentException ? SkipReason.UnknownZone : SkipReason.Unreadable);
        }
    }

    /// <summary>Everything, what touches or overlaps taken together.</summary>
    public BusyFile Sum()
    {
        var apart = new List<Interval>();
        foreach (var time in _times.OrderBy(t => t.Start))
        {
            if (apart.Count > 0 && time.Start <= apart[^1].End) apart[^1] = new Interval(apart[^1].Start, Instant.Max(apart[^1].End, time.End));
            else apart.Add(time);
        }

        return new BusyFile(apart, _events, [.. _skipped.OrderBy(s => s.Key).Select(s => new BusySkip(Said(s.Key), s.Value))]);
    }

    private void Take(IReadOnlyList<CalendarEvent> same)
    {
        var calendar = new Calendar();
        calendar.Events.AddRange(same);
        var from = new CalDateTime((window.Start - Before).ToDateTimeUtc());
        var reasons = new HashSet<SkipReason>();
        var found = new List<Interval>();
        foreach (var one in calendar.GetOccurrences<CalendarEvent>(from, new EvaluationOptions { MaxUnmatchedIncrementsLimit = BusyReader.MostTimes }).Take(BusyReader.MostTimes + 1))
        {
            var source = (CalendarEvent)one.Source;
            var time = BusySpan.Of(source, one.Period.StartTime, zone);
            if (time.Start >= window.End) break;
            if (WhyNot(source, time) is { } why) reasons.Add(why);
            else found.Add(time);
        }

        if (found.Count > 0) _events++;
        else Skip(reasons.Count > 0 ? reasons.Min() : SkipReason.Over);
        _times.AddRange(found);
    }

    private SkipReason? WhyNot(CalendarEvent source, Interval time)
    {
        if (string.Equals(source.Status, EventStatus.Cancelled, StringComparison.OrdinalIgnoreCase)) return SkipReason.Cancelled;
        if (string.Equals(source.Transparency, TransparencyType.Transparent, StringComparison.OrdinalIgnoreCase)) return SkipReason.Free;
        if (time.Duration == NodaTime.Duration.Zero) return SkipReason.NoLength;
        return time.End <= window.Start ? SkipReason.Over : null;
    }

    // Unrolling every second of a year and a half takes longer than anybody waits.
    private static bool IsTooOften(RecurrenceRule? rule) => rule is not null
        && (rule.Frequency is FrequencyType.Secondly or FrequencyType.Minutely or FrequencyType.Hourly || Many(rule.ByHour) * Many(rule.ByMinute) * Many(rule.BySecond) > 24);

    private static int Many(List<int>? parts) => Math.Max(1, parts?.Count ?? 0);

    private static string Said(SkipReason reason) => reason switch
    {
        SkipReason.Free => "marked as free in that calendar",
        SkipReason.Cancelled => "cancelled",
        SkipReason.Over => "over already or more than a year and a half ahead",
        SkipReason.NoLength => "without a length",
        SkipReason.TooOften => "repeated more often than a day has hours",
        SkipReason.UnknownZone => "in a time zone this program does not know",
        _ => "not readable",
    };
}
