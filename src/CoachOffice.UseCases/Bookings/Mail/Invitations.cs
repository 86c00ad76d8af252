using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings.Calendars;
using CoachOffice.UseCases.FollowUps;
using Ical.Net;

namespace CoachOffice.UseCases.Bookings.Mail;

/// <summary>
/// The calendar object of a letter about bookings. REQUEST: one booking, one of a row (with RECURRENCE-ID) or a row as it stands. CANCEL: the same UID,
/// with RECURRENCE-ID for one of a row and without for the whole row (RFC 5546 3.2.5). A row of which only the rest is called off stands on without it: that
/// is a REQUEST again, or the lessons that were given would go from the calendar too.
/// </summary>
public static class Invitations
{
    /// <summary>The object.</summary>
    public static CalendarPart Of(StudentLessons lessons, InvitationFacts to)
    {
        ArgumentNullException.ThrowIfNull(lessons);
        ArgumentNullException.ThrowIfNull(to);
        var facts = to.Facts;
        var form = new LessonEntries(OfficeEnvelopes.HostOf(facts), lesson => new LessonWords($"{lesson.Offering.Name} with {lesson.Coach}"));
        var people = new CalendarPeople(facts.Practice.Name, OfficeEnvelopes.SenderOf(facts), to.Recipient);
        var ends = to.Cancels && !(lessons.IsRow && lessons.Lessons.Any(l => lessons.SeatIn(l).Counts));
        var entries = ends ? [Cancelled(lessons, form)] : Standing(lessons, form);
        var method = ends ? CalendarMethods.Cancel : CalendarMethods.Request;
        return new CalendarPart(method, CalendarWriter.Sent(method, people, entries, facts.Now));
    }

    private static IReadOnlyList<CalendarEntry> Standing(StudentLessons lessons, LessonEntries form)
    {
        if (lessons is not { IsRow: true, Series: { } series }) return [One(lessons, form)];

        // Lessons of a row that are over stay in it: leaving them out would take them from the calendar.
        var row = lessons.Lessons.Where(l => lessons.SeatIn(l).Counts).ToList();
        var entries = form.Row(series, row);
        var revision = lessons.Lessons.Max(lessons.SequenceOf);
        return [.. entries.Select(e => e.Rule is null ? e : e with { Sequence = revision })];
    }

    private static CalendarEntry One(StudentLessons lessons, LessonEntries form)
    {
        var lesson = lessons.Lessons[0];
        var entry = lessons.Series is { } series ? form.OneOf(series, lesson) : form.Single(lesson);
        return entry with { Sequence = lessons.SequenceOf(lesson), State = EntryState.Confirmed };
    }

    private static CalendarEntry Cancelled(StudentLessons lessons, LessonEntries form)
    {
        if (lessons is not { IsRow: true, Series: { } series }) return One(lessons, form) with { State = EntryState.Cancelled };
        var first = form.OneOf(series, lessons.Lessons[0]);
        return first with { Instead = null, Start = series.FirstStart, Zone = series.Zone, Rule = series.Rule, Sequence = lessons.Lessons.Max(lessons.SequenceOf), State = EntryState.Cancelled };
    }
}
