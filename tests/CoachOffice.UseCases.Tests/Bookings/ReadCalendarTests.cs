using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.Calendars.Busy;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Students.Merging;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings;

public abstract class ReadCalendarTests(OfficeFixture fixture)
{
    private static readonly LocalDateTime Ten = new(2026, 3, 10, 10, 0);
    private static readonly CalendarWish Everybody = new(new LocalDate(2026, 3, 9), 7, null);

    [Fact]
    public async Task Days_nobody_changed_are_read_once_and_every_look_of_another_kind_by_itself()
    {
        var (diary, _, _) = await Booked();
        var first = await Look(diary, Everybody);

        Assert.Same(first, await Look(diary, Everybody));
        Assert.NotSame(first, await Look(diary, Everybody with { Days = 1 }));
        var coach = Everybody with { Coach = diary.Office.Coach.Account!.Value };
        Assert.Equal(first.Bookings.Single().Id, (await Look(diary, coach)).Bookings.Single().Id);
        Assert.Empty((await Look(diary, Everybody with { Coach = diary.Office.Owner.Account!.Value })).Bookings);
        Assert.Same(await Look(diary, coach), await Look(diary, coach));
    }

    [Fact]
    public async Task Whatever_a_page_of_the_calendar_shows_is_shown_anew_once_it_changed()
    {
        var (diary, ann, id) = await Booked();
        var office = diary.Office;
        var bob = await diary.Student("Bob");

        var seat = (await Look(diary, Everybody)).Bookings.Single().Seats.Single().Id;
        office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 10, 12, 0, 0, TimeSpan.Zero));
        await Shown(diary, () => office.Must((MarkAttendance mark) => mark.Of(id, seat, true, office.Coach)), v => v.Bookings.Single().Seats.Single().Status == SeatStatus.Attended);
        await Shown(diary, () => diary.Book(diary.At(Ten.PlusDays(1), bob)), v => v.Bookings.Count == 2);
        await Shown(diary, () => office.Must((ChangeStudent change) => change.To(bob, 1, AStudent.Named("Bobby", "Booker"), office.Desk)), v => v.Bookings[1].Seats.Single().Name == "Bobby Booker");
        var merge = new MergeOrder(ann, await Version(diary, ann), bob, await Version(diary, bob), []);
        await Shown(diary, () => office.Must((MergeStudents join) => join.As(merge, office.Owner)), v => v.Bookings[1].Seats.Single().Name == "Ann Booker");
        await Shown(diary, () => office.Must((KeepPlace keep) => keep.As(new PlaceForm { Id = diary.Range, Version = 1, Name = "Lower range" }, office.Owner)), v => v.Bookings[0].Place == "Lower range");
    }

    [Fact]
    public async Task Closed_and_busy_times_come_go_and_change_places()
    {
        var (diary, _, _) = await Booked();
        var office = diary.Office;
        var closed = new ExceptionForm { CoachId = office.Coach.Account, From = Ten.PlusHours(3), Until = Ten.PlusHours(4), Note = "dentist" };
        var busy = new Interval(Instant.FromUtc(2026, 3, 11, 8, 0), Instant.FromUtc(2026, 3, 11, 9, 0));

        await Shown(diary, () => office.Must((AddException add) => add.As(closed, office.Coach)), v => v.Shades.Any(s => s.Why == "dentist"));
        await Shown(diary, () => Replace(diary, closed with { Note = "school run" }), v => v.Shades.Single().Why == "school run");
        await Shown(diary, () => office.Must((KeepBusyTimes keep) => keep.From("home", [busy], office.Coach)), v => v.Shades.Any(s => s.Why == "home"));
        await Shown(diary, () => office.Must((KeepBusyTimes keep) => keep.From("home", [new(busy.Start, busy.End + Duration.FromHours(1))], office.Coach)), v => v.Shades.Any(s => s.Time.End == busy.End + Duration.FromHours(1)));
        await Shown(diary, () => office.Must((RemoveBusyTimes remove) => remove.Of("home", office.Coach)), v => v.Shades.Count == 1);
    }

    // One goes, one comes: as many rows as before.
    private static async Task<int> Replace(Diary diary, ExceptionForm form)
    {
        var office = diary.Office;
        var old = (await office.Do((ReadHours read) => read.Of(form.CoachId!.Value))).Exceptions.Single();
        await office.Must((DropException drop) => drop.Of(old.Id, office.Coach));
        return await office.Must((AddException add) => add.As(form, office.Coach));
    }

    private static Task<int> Version(Diary diary, StudentId student) => diary.Office.Read(db => db.Students.Where(s => s.Id == student).Select(s => s.Version).SingleAsync());

    private static async Task Shown<T>(Diary diary, Func<Task<T>> deed, Func<CalendarView, bool> expected)
    {
        Assert.False(expected(await Look(diary, Everybody)));
        await deed();
        Assert.True(expected(await Look(diary, Everybody)));
    }

    private static Task<CalendarView> Look(Diary diary, CalendarWish wish) => diary.Office.Do((ReadCalendar read) => read.For(wish));

    private async Task<(Diary Diary, StudentId Student, BookingId Booking)> Booked()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var ann = await diary.Student("Ann");
        return (diary, ann, await diary.Book(diary.At(Ten, ann)));
    }
}

public sealed class ReadCalendarOnSqlite(SqliteOffice office) : ReadCalendarTests(office), IClassFixture<SqliteOffice>;

public sealed class ReadCalendarOnPostgreSql(PostgreSqlOffice office) : ReadCalendarTests(office), IClassFixture<PostgreSqlOffice>;
