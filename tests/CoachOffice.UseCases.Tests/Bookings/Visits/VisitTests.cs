using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.Visits;

public abstract class VisitTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_chosen_time_is_kept_for_ten_minutes_and_booked_by_one_press()
    {
        var (guest, ann) = await New();
        var id = await guest.Hold(guest.At(10), ann);

        var held = Assert.Single(await guest.Visits(ann));
        Assert.Equal((SeatStatus.Held, guest.Office.Now + Duration.FromMinutes(10), 4500L), (held.Status, held.HeldUntil, held.PriceMinor));
        Assert.Equal(Instant.FromUtc(2026, 3, 9, 10, 0), held.Cost.FreeUntil);
        Assert.Equal(2250, held.CostLate.FeeMinor);
        Assert.Equal(["09:00", "11:00"], await guest.Free(await guest.Student("Bob")));
        await guest.Office.Must((ConfirmVisit confirm) => confirm.Of(id, ann));
        await guest.Office.Must((ConfirmVisit confirm) => confirm.Of(id, ann));

        Assert.Equal((BookingStatus.Confirmed, SeatStatus.Booked), ((await guest.Booking(id)).Status, (await guest.Visits(ann))[0].Status));
        Assert.Equal(2, (await guest.Booking(id)).Version);
        Assert.Equal([(MessageKind.BookingInvitation, ann.StudentId)], await guest.Office.Read(db => db.Messages.Where(m => m.Kind != MessageKind.LessonReminder).Select(m => new ValueTuple<MessageKind, Domain.Students.StudentId>(m.Kind, m.StudentId!.Value)).ToListAsync()));
    }

    [Fact]
    public async Task An_archived_student_is_sent_to_the_practice()
    {
        var (guest, ann) = await New();
        await guest.Office.Must((UseCases.Students.ArchiveStudent archive) => archive.Now(ann.StudentId, guest.Office.Owner));

        var refusal = (await guest.Office.Refuses((HoldVisit hold) => hold.For(guest.At(10), ann)))[0];

        Assert.Equal("You cannot book here any more. Ask the practice.", refusal.Sentence);
    }

    [Fact]
    public async Task A_form_sent_twice_is_one_booking_and_a_time_that_is_gone_is_said()
    {
        var (guest, ann) = await New();
        var bob = await guest.Student("Bob");
        var form = guest.At(10);

        Assert.Equal(await guest.Hold(form, ann), await guest.Hold(form, ann));
        Assert.Equal(1, await guest.Office.Read(db => db.Bookings.CountAsync()));
        Assert.Equal("time-gone", (await guest.Office.Refuses((HoldVisit hold) => hold.For(guest.At(10), bob)))[0].Code);
        Assert.Equal("lesson-not-found", (await guest.Office.Refuses((HoldVisit hold) => hold.For(form, bob)))[0].Code);
        foreach (var wrong in new[] { guest.At(12), guest.At(8), guest.At(9, 30), guest.At(9) with { CoachId = guest.Office.Owner.Account!.Value }, guest.At(9) with { PlaceId = guest.Diary.Links }, guest.At(9) with { Start = new(2026, 2, 24, 9, 0) } })
            Assert.Equal("time-gone", (await guest.Office.Refuses((HoldVisit hold) => hold.For(wrong, bob)))[0].Code);
    }

    [Fact]
    public async Task Choosing_another_time_lets_the_first_go()
    {
        var (guest, ann) = await New();
        var first = await guest.Hold(guest.At(10), ann);

        Assert.Equal(["09:00", "10:00", "11:00"], await guest.Free(ann));
        await guest.Hold(guest.At(9), ann);

        Assert.False((await guest.Booking(first)).IsOn);
        Assert.Equal(["10:00", "11:00"], await guest.Free(await guest.Student("Bob")));
    }

    [Fact]
    public async Task What_is_not_booked_in_time_lapses_and_is_free_again()
    {
        var (guest, ann) = await New();
        var id = await guest.Hold(guest.At(10), ann);
        guest.Office.Time.Advance(TimeSpan.FromMinutes(10));

        Assert.Equal(SeatStatus.Lapsed, (await guest.Visits(ann))[0].Status);
        Assert.Equal("hold-over", (await guest.Office.Refuses((ConfirmVisit confirm) => confirm.Of(id, ann)))[0].Code);
        Assert.Equal(1, await guest.Minute());

        Assert.Equal(BookingStatus.Lapsed, (await guest.Booking(id)).Status);
        Assert.Equal(0, await guest.Office.Read(db => db.TakenTimes.CountAsync()));
        Assert.Equal(0, await guest.Minute());
        Assert.Equal("hold-over", (await guest.Office.Refuses((ConfirmVisit confirm) => confirm.Of(id, ann)))[0].Code);
    }

    [Fact]
    public async Task Cancelling_costs_what_was_said_and_nothing_happens_when_that_changed()
    {
        var (guest, ann) = await New();
        var id = await guest.Book(guest.At(10), ann);
        guest.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 9, 10, 0, 0, TimeSpan.Zero));
        Assert.False((await guest.Visits(ann))[0].Cost.IsLate);

        guest.Office.Time.Advance(TimeSpan.FromMilliseconds(1));
        Assert.Equal((true, 2250L), ((await guest.Visits(ann))[0].Cost.IsLate, (await guest.Visits(ann))[0].Cost.FeeMinor));
        Assert.Equal("terms-changed", (await guest.Office.Refuses((CancelVisit cancel) => cancel.Of(id, false, ann)))[0].Code);
        Assert.True((await guest.Booking(id)).IsOn);
        await guest.Cancel(id, ann, knowsItIsLate: true);
        await guest.Cancel(id, ann);

        Assert.Equal(SeatStatus.CancelledLate, (await guest.Visits(ann))[0].Status);
        var charged = Assert.Single(await guest.Office.Read(db => db.LedgerEntries.Include(e => e.Postings).ToListAsync()));
        Assert.Equal((ann.StudentId, 2250L), (charged.StudentId, charged.Postings.Single(p => p.Account == Domain.Ledger.LedgerAccount.Receivable).AmountMinor));
    }

    [Fact]
    public async Task A_lesson_moves_to_another_free_time_while_the_notice_runs()
    {
        var (guest, ann) = await New();
        var id = await guest.Book(guest.At(10), ann);
        await guest.Book(guest.At(9), await guest.Student("Bob"));

        Assert.Equal("time-gone", (await guest.Office.Refuses((MoveVisit move) => move.To(guest.At(9) with { Id = id }, ann)))[0].Code);
        await guest.Office.Must((MoveVisit move) => move.To(guest.At(11) with { Id = id }, ann));
        await guest.Office.Must((MoveVisit move) => move.To(guest.At(11) with { Id = id }, ann));

        Assert.Equal((Guest.Tuesday.At(new(11, 0)), 1), ((await guest.Booking(id)).LocalStart, (await guest.Booking(id)).Sequence));
        Assert.Equal(["10:00"], await guest.Free(await guest.Student("Cleo")));
        guest.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 9, 11, 30, 0, TimeSpan.Zero));
        Assert.False((await guest.Visits(ann))[0].MayMove);
        Assert.Equal("cannot-move", (await guest.Office.Refuses((MoveVisit move) => move.To(guest.At(10) with { Id = id }, ann)))[0].Code);
    }

    [Fact]
    public async Task Anothers_lesson_is_as_good_as_none()
    {
        var (guest, ann) = await New();
        var bob = await guest.Student("Bob");
        var held = await guest.Hold(guest.At(10), bob);
        var (group, _) = await guest.FullGroup();

        foreach (var id in new[] { held, group, BookingId.From(Guid.Empty) })
        {
            Assert.Null(await guest.Office.Do((ReadVisits read) => read.Of(id, ann)));
            Assert.Equal("lesson-not-found", (await guest.Office.Refuses((ConfirmVisit confirm) => confirm.Of(id, ann)))[0].Code);
            Assert.Equal("lesson-not-found", (await guest.Office.Refuses((CancelVisit cancel) => cancel.Of(id, true, ann)))[0].Code);
            Assert.Equal("lesson-not-found", (await guest.Office.Refuses((MoveVisit move) => move.To(guest.At(11) with { Id = id }, ann)))[0].Code);
        }

        Assert.Equal("lesson-not-found", (await guest.Office.Refuses((HoldSeat hold) => hold.In(held, ann)))[0].Code);
        Assert.Empty(await guest.Visits(ann));
    }

    [Fact]
    public async Task A_group_is_joined_while_there_is_a_place_and_by_nobody_twice()
    {
        var (guest, ann) = await New();
        var (group, members) = await guest.FullGroup();
        Assert.Equal("booking-full", (await guest.Office.Refuses((HoldSeat hold) => hold.In(group, ann)))[0].Code);
        var seat = (await guest.Booking(group)).Seats.Single(s => s.StudentId == members[0]).Id;
        await guest.Office.Must((UseCases.Bookings.ReleaseSeat release) => release.Of(group, seat, UseCases.Bookings.CancelReason.ByStudent, guest.Office.Desk));

        await guest.Office.Must((HoldSeat hold) => hold.In(group, ann));
        await guest.Office.Must((HoldSeat hold) => hold.In(group, ann));
        await guest.Office.Must((ConfirmVisit confirm) => confirm.Of(group, ann));

        Assert.Equal(1, (await guest.Booking(group)).Seats.Count(s => s.StudentId == ann.StudentId));
        Assert.Equal((SeatStatus.Booked, false), ((await guest.Visits(ann))[0].Status, (await guest.Visits(ann))[0].MayMove));
        await guest.Cancel(group, ann);
        Assert.Equal((BookingStatus.Confirmed, 1), ((await guest.Booking(group)).Status, (await guest.Booking(group)).FreeSeats));
    }

    private async Task<(Guest Guest, VisitPass Ann)> New()
    {
        var guest = await Guest.Of(await fixture.Another(opened: true));
        return (guest, await guest.Student("Ann"));
    }
}

public sealed class VisitOnSqlite(SqliteOffice office) : VisitTests(office), IClassFixture<SqliteOffice>;

public sealed class VisitOnPostgreSql(PostgreSqlOffice office) : VisitTests(office), IClassFixture<PostgreSqlOffice>;
