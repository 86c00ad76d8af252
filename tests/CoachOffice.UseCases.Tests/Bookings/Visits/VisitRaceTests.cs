using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Bookings.Visits;

public abstract class VisitRaceTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Of_twelve_students_who_choose_one_time_at_once_one_gets_it_and_the_others_are_told()
    {
        var guest = await Guest.Of(await fixture.Another(opened: true));
        var passes = new List<VisitPass>();
        for (var n = 0; n < 12; n++) passes.Add(await guest.Student($"Racer{(char)('a' + n)}"));

        var outcomes = await Task.WhenAll(passes.Select(pass => Task.Run(() => guest.Office.Do((HoldVisit hold) => hold.For(guest.At(10), pass)))));

        Assert.Single(outcomes, o => o.Succeeded);
        Assert.All(outcomes.Where(o => !o.Succeeded), o => Assert.Equal("time-gone", o.Refusals[0].Code));
        Assert.Equal(2, await guest.Office.Read(db => db.TakenTimes.CountAsync()));
    }

    [Fact]
    public async Task The_same_presses_at_once_count_once()
    {
        var guest = await Guest.Of(await fixture.Another(opened: true));
        var ann = await guest.Student("Ann");
        var form = guest.At(10);

        Assert.All(await Six(() => guest.Office.Do((HoldVisit hold) => hold.For(form, ann))), o => Assert.True(o.Succeeded, o.Succeeded ? "" : o.Refusals[0].Code));
        Assert.All(await Six(() => guest.Office.Do((ConfirmVisit confirm) => confirm.Of(form.Id, ann))), Fine);
        Assert.Equal((1, 1), (await guest.Office.Read(db => db.Bookings.CountAsync()), await guest.Office.Read(db => db.Messages.CountAsync(m => m.Kind == Domain.FollowUps.MessageKind.BookingInvitation))));
        var wait = guest.AnyTime() with { FirstDay = new(2026, 3, 11), LastDay = new(2026, 3, 11) };
        Assert.All(await Six(() => guest.Office.Do((UseCases.Bookings.Waiting.JoinWaiting join) => join.For(wait, ann))), o => Assert.True(o.Succeeded));
        Assert.Equal(1, await guest.Office.Read(db => db.WaitingPlaces.CountAsync()));
        guest.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 10, 8, 0, 0, TimeSpan.Zero));
        Assert.All(await Six(() => guest.Office.Do((CancelVisit cancel) => cancel.Of(form.Id, true, ann))), Fine);

        Assert.Equal(1, await guest.Office.Read(db => db.LedgerEntries.CountAsync()));
        Assert.Equal(SeatStatus.CancelledLate, (await guest.Visits(ann))[0].Status);
    }

    [Fact]
    public async Task Two_freed_lessons_at_once_are_offered_to_two_in_line_and_nobody_twice()
    {
        var guest = await Guest.Of(await fixture.Another(opened: true));
        var booked = new List<(BookingId Id, VisitPass Pass)>();
        foreach (var hour in new[] { 9, 10, 11 })
        {
            var pass = await guest.Student($"Holder{(char)('a' + hour)}");
            booked.Add((await guest.Book(guest.At(hour), pass), pass));
        }

        var line = new List<VisitPass>();
        for (var n = 0; n < 4; n++)
        {
            line.Add(await guest.Student($"Waiter{(char)('a' + n)}"));
            await guest.Wait(guest.AnyTime(), line[n]);
        }

        var outcomes = await Task.WhenAll(booked.Select(b => Task.Run(() => guest.Office.Do((CancelVisit cancel) => cancel.Of(b.Id, false, b.Pass)))));

        Assert.All(outcomes, o => Assert.True(o.Succeeded));
        var offers = await guest.Office.Read(db => db.WaitingPlaces.Where(w => w.Status == WaitingStatus.Offered).ToListAsync());
        Assert.Equal(offers.Count, offers.Select(o => o.StudentId).Distinct().Count());
        Assert.InRange(offers.Count, 1, 3);
        Assert.Equal(offers.Count * 2, await guest.Office.Read(db => db.TakenTimes.CountAsync()));
    }

    private static void Fine(Outcome<BookingId> outcome) => Assert.True(outcome.Succeeded, outcome.Succeeded ? "" : outcome.Refusals[0].Code);

    private static Task<T[]> Six<T>(Func<Task<T>> press) => Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(press)));
}

public sealed class VisitRaceOnSqlite(SqliteOffice office) : VisitRaceTests(office), IClassFixture<SqliteOffice>;

public sealed class VisitRaceOnPostgreSql(PostgreSqlOffice office) : VisitRaceTests(office), IClassFixture<PostgreSqlOffice>;
