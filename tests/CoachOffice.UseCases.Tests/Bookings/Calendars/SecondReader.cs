using System.Diagnostics;
using System.Text.Json;

namespace CoachOffice.UseCases.Tests.Bookings.Calendars;

/// <summary>Another program reads what we wrote: Debian's python3-icalendar for the text, python3-dateutil for rules and for the zone's rules as they stand in the file.</summary>
internal static class SecondReader
{
    private const string Python = "/usr/bin/python3";

    private const string Script = """
        import io, json, sys
        from dateutil import rrule, tz
        from icalendar import Calendar

        text = sys.stdin.buffer.read()
        calendar = Calendar.from_ical(text)
        zones = tz.tzical(io.StringIO(text.decode("utf-8")))
        local = lambda p: p.dt.replace(tzinfo=zones.get(p.params["TZID"]))
        utc = lambda t: t.astimezone(tz.UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
        events = list(calendar.walk("VEVENT"))
        instead = {(str(e["UID"]), utc(local(e["RECURRENCE-ID"]))): e for e in events if "RECURRENCE-ID" in e}
        seen = []

        def add(event, start):
            seen.append({"start": utc(start), "minutes": int(event["DURATION"].dt.total_seconds() // 60), "summary": str(event["SUMMARY"]),
                         "status": str(event["STATUS"]), "sequence": int(event["SEQUENCE"]), "location": str(event.get("LOCATION", ""))})

        for event in events:
            if "RECURRENCE-ID" in event:
                add(event, local(event["DTSTART"]))
                continue
            start = local(event["DTSTART"])
            starts = [start]
            if "RRULE" in event:
                out = event.get("EXDATE", [])
                out = {utc(d.dt.replace(tzinfo=zones.get(l.params["TZID"]))) for l in (out if isinstance(out, list) else [out]) for d in l.dts}
                starts = [s for s in rrule.rrulestr(event["RRULE"].to_ical().decode(), dtstart=start) if utc(s) not in out]
            for s in starts:
                if (str(event["UID"]), utc(s)) not in instead:
                    add(event, s)

        head = {k: str(calendar[k]) for k in calendar}
        people = [str(e[k]) for e in events for k in ("ORGANIZER", "ATTENDEE") if k in e]
        probes = []
        for probe in sys.argv[1:]:
            zone, at = probe.split("@")
            moment = __import__("datetime").datetime.fromtimestamp(int(at), tz.UTC).astimezone(zones.get(zone))
            probes.append(int(moment.utcoffset().total_seconds()))
        print(json.dumps({"head": head, "people": people, "events": sorted(seen, key=lambda e: e["start"]), "offsets": probes}))
        """;

    private static readonly Lazy<string?> Missing = new(WhatIsMissing);

    /// <summary>What it read; skips the test where the program is not installed.</summary>
    /// <param name="calendar">The text as we send it.</param>
    /// <param name="probes">Zone and instant (<c>Europe/London@1774746000</c>, in seconds) whose offset by the file's own rules is wanted.</param>
    public static async Task<SecondReading> Read(string calendar, params string[] probes)
    {
        if (Missing.Value is { } why) Assert.Skip(why);
        using var process = Start(["-c", Script, .. probes]);
        await process.StandardInput.WriteAsync(calendar);
        process.StandardInput.Close();
        var said = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var wrong = await process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, wrong);
        return JsonSerializer.Deserialize<SecondReading>(await said, JsonSerializerOptions.Web)!;
    }

    private static string? WhatIsMissing()
    {
        if (!File.Exists(Python)) return $"There is no {Python}.";
        using var process = Start(["-c", "import icalendar, dateutil"]);
        process.StandardInput.Close();
        process.StandardError.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? null : "The packages python3-icalendar and python3-dateutil are not installed.";
    }

    private static Process Start(IEnumerable<string> arguments)
    {
        var start = new ProcessStartInfo(Python) { UseShellExecute = false, RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true };
        foreach (var argument in arguments) start.ArgumentList.Add(argument);
        return Process.Start(start)!;
    }
}

/// <summary>What the other program found.</summary>
internal sealed record SecondReading(Dictionary<string, string> Head, List<string> People, List<SeenEvent> Events, List<int> Offsets);

/// <summary>One instance.</summary>
internal sealed record SeenEvent(string Start, int Minutes, string Summary, string Status, int Sequence, string Location);
