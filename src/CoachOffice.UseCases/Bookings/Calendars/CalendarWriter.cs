using CoachOffice.UseCases.FollowUps;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars;

/// <summary>Writes entries as one VCALENDAR (RFC 5545): zones with their rules beside them, folded and escaped by the library.</summary>
public static class CalendarWriter
{
    private const string Product = "-//CoachOffice//Bookings//EN";

    /// <summary>A calendar others look at, by name.</summary>
    public static string Published(string name, IReadOnlyList<CalendarEntry> entries, Instant now)
    {
        var calendar = Of(entries, now, people: null);
        calendar.Method = CalendarMethods.Publish;

        // Not in RFC 5545 itself; most programs show the first, RFC 7986 has the second.
        calendar.AddProperty("X-WR-CALNAME", CleanText.Line(name));
        calendar.AddProperty("NAME", CleanText.Line(name));
        calendar.AddProperty("REFRESH-INTERVAL;VALUE=DURATION", "PT1H");
        return Text(calendar);
    }

    /// <summary>What goes to one person by mail (RFC 5546): REQUEST or CANCEL.</summary>
    public static string Sent(string method, CalendarPeople people, IReadOnlyList<CalendarEntry> entries, Instant now)
    {
        ArgumentNullException.ThrowIfNull(people);
        var calendar = Of(entries, now, people);
        calendar.Method = method;
        return Text(calendar);
    }

    private static Calendar Of(IReadOnlyList<CalendarEntry> entries, Instant now, CalendarPeople? people)
    {
        ArgumentNullException.ThrowIfNull(entries);
        var calendar = new Calendar { ProductId = Product };
        foreach (var zone in entries.GroupBy(e => e.Zone, StringComparer.Ordinal)) calendar.AddTimeZone(ZoneRules.Of(zone.Key, zone.Min(e => e.Start).Date, zone.Max(e => e.Start).Date));
        foreach (var entry in entries) calendar.Events.Add(Event(entry, now, people));
        return calendar;
    }

    private static CalendarEvent Event(CalendarEntry entry, Instant now, CalendarPeople? people)
    {
        var written = new CalendarEvent
        {
            Uid = entry.Uid,
            DtStamp = new CalDateTime(now.ToDateTimeUtc()),
            DtStart = At(entry.Start, entry.Zone),
            Duration = Ical.Net.DataTypes.Duration.FromMinutes(entry.Minutes),
            Summary = CleanText.Line(entry.Summary),
            Sequence = entry.Sequence,
            Status = entry.State switch { EntryState.Cancelled => EventStatus.Cancelled, EntryState.Tentative => EventStatus.Tentative, _ => EventStatus.Confirmed },
        };
        if (entry.Location.Length > 0) written.Location = CleanText.Line(entry.Location);
        if (entry.Description.Length > 0) written.Description = string.Join("\n", CleanText.Paragraphs(entry.Description));
        if (entry.Rule is { } rule) written.RecurrenceRule = new RecurrenceRule(rule);
        foreach (var day in entry.Without) written.ExceptionDates.Add(At(day, entry.Zone));
        if (entry.Instead is { } instead) written.RecurrenceIdentifier = new RecurrenceIdentifier(At(instead, entry.Zone));
        if (people is not null) Name(written, people);
        return written;
    }

    // The seat is booked, so there is nothing to answer: no program is asked to send replies, and nobody here reads them.
    private static void Name(CalendarEvent written, CalendarPeople people)
    {
        written.Organizer = new Organizer($"mailto:{people.OrganizerAddress}") { CommonName = Quotable(people.OrganizerName) };
        written.Attendees.Add(new Attendee($"mailto:{people.Attendee.Address}")
        {
            CommonName = Quotable(people.Attendee.Name),
            Type = "INDIVIDUAL",
            Role = ParticipationRole.RequiredParticipant,
            ParticipationStatus = EventParticipationStatus.Accepted,
            Rsvp = false,
        });
    }

    // A parameter's value cannot hold a double quote (RFC 5545 3.2).
    private static string Quotable(string name) => CleanText.Line(name).Replace('"', '\'');

    private static CalDateTime At(LocalDateTime local, string zone) => new(local.ToDateTimeUnspecified(), zone);

    private static string Text(Calendar calendar) => new CalendarSerializer().SerializeToString(calendar)!;
}
