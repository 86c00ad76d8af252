using CoachOffice.Domain.Bookings;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars;

/// <summary>
/// Bookings as entries of a calendar. A row of bookings is one entry with its rule: without the starts nobody comes to, and with an entry of its own for
/// each that is otherwise than the rule says.
/// </summary>
/// <param name="Host">Right part of every UID: the office's own.</param>
/// <param name="Describe">What the reader sees; summary, place, more.</param>
public sealed record LessonEntries(string Host, Func<LessonFacts, LessonWords> Describe)
{
    /// <summary>One booking by itself.</summary>
    public CalendarEntry Single(LessonFacts lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return Entry(lesson) with { Uid = $"booking-{lesson.Booking.Id.Value:N}@{Host}" };
    }

    /// <summary>One of a row, by itself.</summary>
    public CalendarEntry OneOf(BookingSeries series, LessonFacts lesson)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(lesson);
        return Entry(lesson) with { Uid = UidOf(series.Id), Instead = lesson.Booking.SeriesStart };
    }

    /// <summary>A whole row as the reader has it.</summary>
    /// <param name="series">The row.</param>
    /// <param name="lessons">Its bookings that take place for the reader; others of the rule are left out.</param>
    public IReadOnlyList<CalendarEntry> Row(BookingSeries series, IReadOnlyList<LessonFacts> lessons)
    {
        ArgumentNullException.ThrowIfNull(series);
        ArgumentNullException.ThrowIfNull(lessons);
        var ruled = RuleDates.Of(series.Rule, series.FirstStart, series.Zone);
        var inside = lessons.Where(l => l.Booking.SeriesStart is { } start && ruled.Contains(start)).ToList();
        if (inside.Count == 0) return [.. lessons.Select(Single)];
        var kept = inside.Select(l => l.Booking.SeriesStart!.Value).ToHashSet();
        var usual = Usual(series, inside);
        var master = usual with { Rule = series.Rule, Without = [.. ruled.Where(start => !kept.Contains(start))], Sequence = lessons.Max(l => l.Booking.Sequence) };
        var otherwise = inside.Select(l => OneOf(series, l)).Where(entry => !IsAsRuled(entry, usual));
        return [master, .. otherwise, .. lessons.Except(inside).Select(Single)];
    }

    /// <summary>The UID of a row and of each that belongs to it.</summary>
    public string UidOf(SeriesId series) => $"series-{series.Value:N}@{Host}";

    // What most of them look like, at the first start of the rule.
    private CalendarEntry Usual(BookingSeries series, IReadOnlyList<LessonFacts> lessons)
    {
        var looks = lessons.Select(Entry).GroupBy(e => (e.Minutes, e.Summary, e.Location, e.Description)).MaxBy(g => g.Count())!.First();
        return looks with { Uid = UidOf(series.Id), Start = series.FirstStart, Zone = series.Zone, State = EntryState.Confirmed };
    }

    private static bool IsAsRuled(CalendarEntry entry, CalendarEntry usual) =>
        entry.Start == entry.Instead && entry.Zone == usual.Zone && entry.Minutes == usual.Minutes && entry.State == usual.State
        && entry.Summary == usual.Summary && entry.Location == usual.Location && entry.Description == usual.Description;

    private CalendarEntry Entry(LessonFacts lesson)
    {
        var (booking, words) = (lesson.Booking, Describe(lesson));
        return new CalendarEntry
        {
            Uid = "",
            Start = booking.LocalStart,
            Zone = booking.Zone,
            Minutes = booking.Minutes,
            Summary = words.Summary,
            Location = lesson.Where,
            Description = words.More,
            Sequence = booking.Sequence,
            State = booking.Status switch { BookingStatus.Held => EntryState.Tentative, BookingStatus.Cancelled or BookingStatus.Lapsed => EntryState.Cancelled, _ => EntryState.Confirmed },
        };
    }
}

/// <summary>What the reader of a calendar sees of a lesson.</summary>
public sealed record LessonWords(string Summary, string More = "");
