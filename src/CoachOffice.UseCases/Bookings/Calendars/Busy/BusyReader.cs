using System.Runtime.Serialization;
using CoachOffice.Domain;
using Ical.Net;
using Ical.Net.CalendarComponents;
using NodaTime;

namespace CoachOffice.UseCases.Bookings.Calendars.Busy;

/// <summary>
/// Reads when somebody is busy from a calendar's text (RFC 5545): rows unrolled for a year and a half, whole days and times without a zone in the
/// practice's zone, what is free or cancelled left out.
/// </summary>
public static class BusyReader
{
    /// <summary>Largest file, in bytes.</summary>
    public const int LargestFile = 2 * 1024 * 1024;

    /// <summary>More times than a year and a half has room for are no calendar of a person.</summary>
    public const int MostTimes = 10_000;

    private const int MonthsAhead = 18;
    private const int MostEvents = 50_000;

    /// <summary>The times from now on, or why the file is none.</summary>
    /// <param name="text">The file.</param>
    /// <param name="zone">The practice's zone.</param>
    /// <param name="now">What is over by then is left out.</param>
    public static Outcome<BusyFile> Read(string text, DateTimeZone zone, Instant now)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(zone);
        if (!EventTexts.IsCalendar(text)) return new Refusal("busy-not-calendar", "This is no calendar file. Export the calendar as .ics, then pick that file.", "File");
        var found = new BusyFinds(new Interval(now, now.InZone(zone).LocalDateTime.PlusMonths(MonthsAhead).InZoneLeniently(zone).ToInstant()), zone);
        var readable = new List<CalendarEvent>();
        foreach (var one in EventTexts.Of(text).Take(MostEvents))
        {
            if (Parsed(one) is { } read) readable.Add(read);
            else found.Skip(SkipReason.Unreadable);
        }

        foreach (var same in readable.GroupBy(e => e.Uid ?? "", StringComparer.Ordinal)) found.Add([.. same]);
        return found.Times.Count > MostTimes
            ? new Refusal("busy-too-many", $"This file has more than {MostTimes:N0} busy times. Export a single calendar, or a shorter part of it.", "File")
            : found.Sum();
    }

    private static CalendarEvent? Parsed(string text)
    {
        try
        {
            return Calendar.Load(text)?.Events.SingleOrDefault(e => e.DtStart is not null);
        }
        catch (Exception fault) when (IsOfTheFile(fault))
        {
            return null;
        }
    }

    /// <summary>What the library says of text it cannot read; anything else is a fault of ours.</summary>
    internal static bool IsOfTheFile(Exception fault) =>
        fault is SerializationException or ArgumentException or FormatException or OverflowException or InvalidOperationException or Ical.Net.Evaluation.EvaluationException;
}
