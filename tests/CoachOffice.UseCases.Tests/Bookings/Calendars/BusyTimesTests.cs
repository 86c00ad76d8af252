using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Calendars.Busy;
using CoachOffice.UseCases.Tests.Bookings.Mail;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.Calendars;

public abstract class BusyTimesTests(OfficeFixture fixture)
{
    private const string Dentist = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//T//T//EN\r\nBEGIN:VEVENT\r\nUID:a\r\nSUMMARY:Dentist Dr Molar\r\nDTSTART:20260330T083000Z\r\nDTEND:20260330T093000Z\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";

    [Fact]
    public async Task A_file_is_looked_at_first_and_then_kept_as_times_only()
    {
        var office = await fixture.Another(opened: true);
        var lessons = await BookedLessons.Of(office);
        await lessons.Book(new LocalDateTime(2026, 3, 30, 9, 0), await office.Register(AStudent.Named("Alma", "Reed")));

        var preview = await office.Must((PreviewBusyFile look) => look.Of(Dentist, office.Coach));

        Assert.Equal((1, 1, 1), (preview.File.Times.Count, preview.File.Events, preview.BookedWithin));
        Assert.Empty(await office.Read(db => db.BusyTimes.ToListAsync()));
        Assert.Equal(1, await office.Must((KeepBusyTimes keep) => keep.From(" Private ", preview.File.Times, office.Coach)));
        var kept = await office.Read(db => db.BusyTimes.SingleAsync());
        Assert.Equal(("Private", Instant.FromUtc(2026, 3, 30, 8, 30), Instant.FromUtc(2026, 3, 30, 9, 30), office.Coach.Account), (kept.Source, kept.From, kept.Until, kept.CoachId));
        Assert.DoesNotContain(await TextSearch.Everywhere(office, "Molar"), _ => true);
        Assert.Contains(await office.Read(db => db.AuditEntries.Select(a => a.Action).ToListAsync()), a => a == "busy-times-kept");
    }

    [Fact]
    public async Task A_second_file_under_the_same_name_takes_the_place_of_the_first_and_of_no_other()
    {
        var office = await fixture.Another(opened: true);
        await Keep(office, "Home", 1, 2, 3);
        await Keep(office, "Club", 4);
        await office.Must((KeepBusyTimes keep) => keep.From("Home", Days(9), office.Owner));

        await Keep(office, "Home", 5);

        var mine = await office.Must((ListBusySources list) => list.Of(office.Coach));
        Assert.Equal([("Club", 1), ("Home", 1)], mine.Rows.Select(r => (r.Name, r.Count)));
        Assert.Equal(3, await office.Read(db => db.BusyTimes.CountAsync()));
    }

    [Fact]
    public async Task Removing_takes_away_ones_own_only()
    {
        var office = await fixture.Another(opened: true);
        await Keep(office, "Home", 1, 2);
        Assert.Equal("busy-not-found", (await office.Refuses((RemoveBusyTimes remove) => remove.Of("Home", office.Owner))).Single().Code);

        Assert.Equal(2, await office.Must((RemoveBusyTimes remove) => remove.Of("Home", office.Coach)));

        Assert.Empty(await office.Read(db => db.BusyTimes.ToListAsync()));
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("a\nb")]
    [InlineData("\u202ename")]
    public async Task A_name_is_one_line(string name) =>
        Assert.Equal("Name", (await fixture.Office.Refuses((KeepBusyTimes keep) => keep.From(name, Days(1), fixture.Office.Coach))).Single().Field);

    [Fact]
    public async Task The_desk_keeps_none_and_an_empty_file_says_what_was_left_out()
    {
        var office = fixture.Office;

        Assert.Equal(NotAllowed.Code, (await office.Refuses((PreviewBusyFile look) => look.Of(Dentist, office.Desk))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((KeepBusyTimes keep) => keep.From("x", Days(1), office.Desk))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((RemoveBusyTimes remove) => remove.Of("x", office.Desk))).Single().Code);
        Assert.Equal(NotAllowed.Code, (await office.Refuses((ListBusySources list) => list.Of(office.Desk))).Single().Code);
        var none = (await office.Refuses((PreviewBusyFile look) => look.Of(Dentist.Replace("END:VEVENT", "TRANSP:TRANSPARENT\r\nEND:VEVENT", StringComparison.Ordinal), office.Coach))).Single();
        Assert.Equal("No busy time from now on was found in it; left out: 1 marked as free in that calendar.", none.Sentence);
    }

    private static Task<int> Keep(TestOffice office, string name, params int[] days) => office.Must((KeepBusyTimes keep) => keep.From(name, Days(days), office.Coach));

    private static List<Interval> Days(params int[] days) => [.. days.Select(d => new Interval(Instant.FromUtc(2026, 5, d, 9, 0), Instant.FromUtc(2026, 5, d, 10, 0)))];
}

public sealed class BusyTimesOnSqlite(SqliteOffice office) : BusyTimesTests(office), IClassFixture<SqliteOffice>;

public sealed class BusyTimesOnPostgreSql(PostgreSqlOffice office) : BusyTimesTests(office), IClassFixture<PostgreSqlOffice>;
