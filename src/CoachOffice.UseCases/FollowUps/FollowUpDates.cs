using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;
using NodaTime.TimeZones;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>When things are due. Pure: it knows a zone, days and the rulebook's lengths, and no clock.</summary>
/// <param name="Zone">The practice's Zone.</param>
public sealed record FollowUpDates(DateTimeZone Zone)
{
    /// <summary>When mail goes out unless something else is said.</summary>
    public static readonly LocalTime SendingTime = new(9, 0);

    /// <summary>From this hour on nothing goes out by itself.</summary>
    public LocalTime QuietFrom { get; init; } = new(20, 0);

    /// <summary>Until this hour nothing goes out by itself; not after <see cref="QuietFrom"/> when the quiet time is one of the day.</summary>
    public LocalTime QuietUntil { get; init; } = new(8, 0);

    private static readonly LocalTime LastEvening = new(19, 0);
    private static readonly Duration Rest = Duration.FromHours(24);
    private const int SecondLookAfterDays = 10;
    private const int SecondLookAtMostDays = 14;

    /// <summary>The practice's day of an instant.</summary>
    public LocalDate DayOf(Instant instant) => instant.InZone(Zone).Date;

    /// <summary>
    /// A local time of a day as an instant. A time that a clock change skips moves on by the length of the gap, one that comes twice is the first
    /// (RFC 5545 section 3.3.5): a reminder is never dropped and never goes out twice.
    /// </summary>
    public Instant At(LocalDate day, LocalTime time) =>
        Zone.ResolveLocal(day + time, Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnForwardShifted)).ToInstant();

    /// <summary>The sending time of a day.</summary>
    public Instant Morning(LocalDate day) => At(day, SendingTime);

    /// <summary>The first sending time that is not before an instant.</summary>
    public Instant NextMorning(Instant notBefore)
    {
        var day = DayOf(notBefore);
        return Morning(day) >= notBefore ? Morning(day) : Morning(day.PlusDays(1));
    }

    /// <summary>When a lesson is spoken of: so long before it, by day, and no later than the least time before; the evening before where its own morning is too late.</summary>
    public Instant Reminder(Instant starts, Duration before, Duration least)
    {
        var at = starts - before;
        if (!IsQuiet(at)) return at;
        var morning = NextMorning(at);
        return morning <= starts - least ? morning : At(DayOf(starts).PlusDays(-1), LastEvening);
    }

    /// <summary>By night, or whenever a student wants quiet, nothing goes out by itself.</summary>
    public bool IsQuiet(Instant now)
    {
        var time = now.InZone(Zone).TimeOfDay;
        return QuietFrom < QuietUntil ? time >= QuietFrom && time < QuietUntil : QuietFrom != QuietUntil && (time >= QuietFrom || time < QuietUntil);
    }

    /// <summary>When it is no longer quiet: after a night not before the sending time, else as soon as the quiet ends.</summary>
    public Instant AfterQuiet(Instant now)
    {
        var ends = QuietFrom > QuietUntil ? LocalTime.Max(QuietUntil, SendingTime) : QuietUntil;
        var day = DayOf(now);
        return At(day, ends) >= now ? At(day, ends) : At(day.PlusDays(1), ends);
    }

    /// <summary>The same for messages to a student: their own clock and their own quiet hours where they named them.</summary>
    public FollowUpDates For(ContactWishes wishes)
    {
        ArgumentNullException.ThrowIfNull(wishes);
        var theirs = wishes.Zone.Length > 0 && DateTimeZoneProviders.Tzdb.GetZoneOrNull(wishes.Zone) is { } zone ? this with { Zone = zone } : this;
        return wishes is { QuietFrom: { } from, QuietUntil: { } until } ? theirs with { QuietFrom = new LocalTime(from, 0), QuietUntil = new LocalTime(until, 0) } : theirs;
    }

    /// <summary>The end of a stage that begins on a day: its longest usual length, and never later than the day any stage is looked at again.</summary>
    public static LocalDate StageEnd(LocalDate began, Stage stage, Dosage dosage)
    {
        ArgumentNullException.ThrowIfNull(dosage);
        var usual = dosage.Stages.FirstOrDefault(s => s.Stage == stage)?.LongestDays ?? dosage.LookAgainAfterDays;
        return began.PlusDays(Math.Max(1, Math.Min(usual, dosage.LookAgainAfterDays)));
    }

    /// <summary>The day to read the number again: the stage's end, a day or more after the last practice, never a lesson's day.</summary>
    /// <param name="stageEnd">The planned end of the stage.</param>
    /// <param name="lastPractice">End of the last logged practice, or null.</param>
    /// <param name="lessonDays">Days on which the student is, or was, taught.</param>
    public LocalDate RetestDay(LocalDate stageEnd, Instant? lastPractice, IEnumerable<LocalDate> lessonDays)
    {
        var day = lastPractice is { } practised ? LocalDate.Max(stageEnd, DayOf(NextMorning(practised + Rest))) : stageEnd;
        var taught = lessonDays.ToHashSet();
        while (taught.Contains(day)) day = day.PlusDays(1);
        return day;
    }

    /// <summary>Whether a number may be asked for now, seen from the last logged practice.</summary>
    public static bool IsRested(Instant? lastPractice, Instant now) => lastPractice is not { } practised || now >= practised + Rest;

    /// <summary>The second look, one to two weeks after a verdict, never a lesson's day.</summary>
    public static LocalDate SecondLook(LocalDate verdict, IEnumerable<LocalDate> lessonDays)
    {
        var taught = lessonDays.ToHashSet();
        var days = Enumerable.Range(SecondLookAfterDays, SecondLookAtMostDays - SecondLookAfterDays + 1).Concat([9, 8, 7]).Select(verdict.PlusDays).ToList();
        return days.Where(d => !taught.Contains(d)).DefaultIfEmpty(days[0]).First();
    }

    /// <summary>The end of a practice reported at an instant for a day: that instant for today, else the end of the day named.</summary>
    public Instant PracticeEnd(Instant reportedAt, LocalDate practicedOn) =>
        practicedOn >= DayOf(reportedAt) ? reportedAt : Zone.AtStartOfDay(practicedOn.PlusDays(1)).ToInstant();

    /// <summary>A day put off by the length of a pause.</summary>
    public static LocalDate Postponed(LocalDate day, LocalDate pausedOn, LocalDate restartsOn) =>
        day.PlusDays(Math.Max(0, Period.Between(pausedOn, restartsOn, PeriodUnits.Days).Days));
}
