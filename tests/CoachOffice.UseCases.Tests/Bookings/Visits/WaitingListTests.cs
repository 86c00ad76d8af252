using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.UseCases.Bookings.Waiting;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.Visits;

public abstract class WaitingListTests(OfficeFixture fixture)
{
    [Fact]
    public async Task What_becomes_free_is_kept_for_the_first_in_line_who_is_written_to()
    {
        var (guest, booked) = await FullMorning();
        var (ann, bob) = (await guest.Student("Ann"), await guest.Student("Bob"));
        var first = await guest.Wait(guest.AnyTime(), ann);
        guest.Office.Time.Advance(TimeSpan.FromMinutes(1));
        var second = await guest.Wait(guest.AnyTime(), bob);

        await guest.Cancel(booked[1].Id, booked[1].Pass);

        var offer = await guest.Offer(ann);
        Assert.Equal((true, Guest.Tuesday.At(new(10, 0)), guest.Office.Now + Duration.FromMinutes(120)), (offer!.IsOffer, offer.LocalStart, offer.HeldUntil));
        Assert.Null(await guest.Offer(bob));
        Assert.Equal((WaitingStatus.Offered, WaitingStatus.Waiting), ((await guest.Waiting(first)).Status, (await guest.Waiting(second)).Status));
        Assert.Equal(ann.StudentId, (await guest.Office.Read(db => db.Messages.SingleAsync(m => m.Kind == MessageKind.WaitingOffer))).StudentId);
        Assert.Empty(await guest.Free(bob));

        await guest.Office.Must((ConfirmVisit confirm) => confirm.Of(offer.Id, ann));
        Assert.Equal(WaitingStatus.Taken, (await guest.Waiting(first)).Status);
        Assert.Equal(SeatStatus.Booked, (await guest.Visits(ann))[0].Status);
    }

    [Fact]
    public async Task An_offer_that_runs_out_or_is_let_go_goes_to_the_next()
    {
        var (guest, booked) = await FullMorning();
        var (ann, bob, cleo) = (await guest.Student("Ann"), await guest.Student("Bob"), await guest.Student("Cleo"));
        var first = await guest.Wait(guest.AnyTime(), ann);
        foreach (var pass in new[] { bob, cleo })
        {
            guest.Office.Time.Advance(TimeSpan.FromMinutes(1));
            await guest.Wait(guest.AnyTime(), pass);
        }

        await guest.Cancel(booked[0].Id, booked[0].Pass);
        guest.Office.Time.Advance(TimeSpan.FromMinutes(120));
        Assert.Empty(await guest.Free(await guest.Student("Dora")));
        await guest.Minute();

        Assert.Equal(WaitingStatus.Passed, (await guest.Waiting(first)).Status);
        var offer = await guest.Offer(bob);
        await guest.Cancel(offer!.Id, bob);

        Assert.Equal(Guest.Tuesday.At(new(9, 0)), (await guest.Offer(cleo))!.LocalStart);
        Assert.Null(await guest.Offer(ann));
        guest.Office.Time.Advance(TimeSpan.FromMinutes(121));
        await guest.Minute();
        Assert.Equal(["09:00"], await guest.Free(ann));
    }

    [Fact]
    public async Task A_freed_place_in_a_group_goes_to_who_waits_for_that_group()
    {
        var guest = await Guest.Of(await fixture.Another(opened: true));
        var (group, members) = await guest.FullGroup();
        var (ann, bob) = (await guest.Student("Ann"), await guest.Student("Bob"));
        var wait = new WaitingForm { Id = Guid.Parse("80000000-0000-0000-0000-000000000001"), OfferingId = guest.Diary.Group, BookingId = group, FirstDay = Guest.Tuesday, LastDay = Guest.Tuesday };
        await guest.Wait(wait, ann);
        Assert.Equal(wait.Id, await guest.Wait(wait with { Id = Guid.Parse("80000000-0000-0000-0000-000000000002") }, ann));
        guest.Office.Time.Advance(TimeSpan.FromMinutes(1));
        await guest.Wait(wait with { Id = Guid.Parse("80000000-0000-0000-0000-000000000003") }, bob);

        await Release(guest, group, members[0]);

        Assert.True((await guest.Offer(ann))!.IsOffer);
        Assert.Null(await guest.Offer(bob));
        Assert.Equal("booking-full", (await guest.Office.Refuses((HoldSeat hold) => hold.In(group, bob)))[0].Code);
        guest.Office.Time.Advance(TimeSpan.FromMinutes(120));
        await guest.Minute();

        Assert.True((await guest.Offer(bob))!.IsOffer);
        Assert.Equal((BookingStatus.Confirmed, 0), ((await guest.Booking(group)).Status, (await guest.Booking(group)).FreeSeats));
    }

    [Fact]
    public async Task Who_cannot_come_then_is_left_out_and_keeps_the_place_in_line()
    {
        var (guest, booked) = await FullMorning();
        var (ann, bob) = (await guest.Student("Ann"), await guest.Student("Bob"));
        var first = await guest.Wait(guest.AnyTime(), ann);
        guest.Office.Time.Advance(TimeSpan.FromMinutes(1));
        await guest.Wait(guest.AnyTime(), bob);
        await guest.Diary.Book(guest.Diary.At(Guest.Tuesday.At(new(10, 0)), ann.StudentId) with { CoachId = guest.Office.Owner.Account!.Value });

        await guest.Cancel(booked[1].Id, booked[1].Pass);

        Assert.Equal(Guest.Tuesday.At(new(10, 0)), (await guest.Offer(bob))!.LocalStart);
        Assert.Equal(WaitingStatus.Waiting, (await guest.Waiting(first)).Status);
    }

    [Fact]
    public async Task A_moved_lesson_frees_its_old_time_and_the_offices_cancelling_counts_too()
    {
        var (guest, booked) = await FullMorning();
        var (ann, bob) = (await guest.Student("Ann"), await guest.Student("Bob"));
        await guest.Wait(guest.AnyTime(), ann);
        guest.Office.Time.Advance(TimeSpan.FromMinutes(1));
        await guest.Wait(guest.AnyTime(), bob);

        await guest.Office.Must((MoveBooking move) => move.To(booked[0].Id, null, new MoveForm { Start = Guest.Tuesday.At(new(18, 0)) }, guest.Office.Desk));
        await guest.Office.Must((CancelBooking cancel) => cancel.Of(booked[2].Id, null, CancelReason.ByPractice, guest.Office.Coach));

        Assert.Equal((Guest.Tuesday.At(new(9, 0)), Guest.Tuesday.At(new(11, 0))), ((await guest.Offer(ann))!.LocalStart, (await guest.Offer(bob))!.LocalStart));
    }

    [Fact]
    public async Task Nobody_is_asked_for_what_is_too_near_or_on_another_day()
    {
        var (guest, booked) = await FullMorning();
        var (ann, bob) = (await guest.Student("Ann"), await guest.Student("Bob"));
        await guest.Wait(guest.AnyTime(), ann);
        await guest.Wait(guest.AnyTime(Guest.Tuesday.PlusDays(1), Guest.Tuesday.PlusDays(6)), bob);
        guest.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 9, 22, 30, 0, TimeSpan.Zero));

        await guest.Cancel(booked[1].Id, booked[1].Pass, knowsItIsLate: true);

        Assert.Null(await guest.Offer(ann));
        Assert.Null(await guest.Offer(bob));
    }

    [Fact]
    public async Task A_wish_that_needs_no_waiting_is_refused_with_the_way_out()
    {
        var guest = await Guest.Of(await fixture.Another(opened: true));
        var ann = await guest.Student("Ann");
        async Task<string> Code(WaitingForm form) => (await guest.Office.Refuses((JoinWaiting join) => join.For(form, ann)))[0].Code;

        Assert.Equal("waiting-not-needed", await Code(guest.AnyTime()));
        Assert.Equal("waiting-days", await Code(guest.AnyTime(new(2026, 3, 1), new(2026, 3, 4))));
        Assert.Equal("waiting-days", await Code(guest.AnyTime(new(2026, 3, 5), new(2026, 3, 4))));
        Assert.Equal("free-times-days", await Code(guest.AnyTime(new(2026, 3, 5), new(2026, 4, 30))));
        Assert.Equal("offering-not-found", await Code(guest.AnyTime() with { OfferingId = OfferingId.From(ann.StudentId.Value) }));
        Assert.Equal("booking-not-found", await Code(guest.AnyTime() with { BookingId = BookingId.From(ann.StudentId.Value) }));
    }

    [Fact]
    public async Task Whoever_leaves_or_waits_for_days_gone_by_is_out_of_the_line()
    {
        var (guest, booked) = await FullMorning();
        var (ann, bob) = (await guest.Student("Ann"), await guest.Student("Bob"));
        var anns = await guest.Wait(guest.AnyTime(), ann);
        var bobs = await guest.Wait(guest.AnyTime(), bob);
        Assert.Equal("waiting-not-found", (await guest.Office.Refuses((LeaveWaiting leave) => leave.Of(anns, bob)))[0].Code);
        await guest.Office.Must((LeaveWaiting leave) => leave.Of(anns, ann));
        await guest.Office.Must((LeaveWaiting leave) => leave.Of(anns, ann));
        await guest.Cancel(booked[1].Id, booked[1].Pass);
        Assert.Null(await guest.Offer(ann));
        Assert.Equal("waiting-offered", (await guest.Office.Refuses((LeaveWaiting leave) => leave.Of(bobs, bob)))[0].Code);

        var late = await guest.Wait(guest.AnyTime(), await guest.Student("Cleo"));
        guest.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 11, 9, 0, 0, TimeSpan.Zero));
        await guest.Minute();
        Assert.Equal(WaitingStatus.Left, (await guest.Waiting(late)).Status);
    }

    private static async Task Release(Guest guest, BookingId booking, Domain.Students.StudentId student)
    {
        var seat = (await guest.Booking(booking)).Seats.Single(s => s.StudentId == student).Id;
        await guest.Office.Must((ReleaseSeat release) => release.Of(booking, seat, CancelReason.ByStudent, guest.Office.Desk));
    }

    /// <summary>Nine, ten and eleven are booked by others.</summary>
    private async Task<(Guest Guest, IReadOnlyList<(BookingId Id, VisitPass Pass)> Booked)> FullMorning()
    {
        var guest = await Guest.Of(await fixture.Another(opened: true));
        var booked = new List<(BookingId, VisitPass)>();
        foreach (var (hour, name) in new[] { (9, "Nina"), (10, "Tom"), (11, "Elva") })
        {
            var pass = await guest.Student(name);
            booked.Add((await guest.Book(guest.At(hour), pass), pass));
        }

        return (guest, booked);
    }
}

public sealed class WaitingListOnSqlite(SqliteOffice office) : WaitingListTests(office), IClassFixture<SqliteOffice>;

public sealed class WaitingListOnPostgreSql(PostgreSqlOffice office) : WaitingListTests(office), IClassFixture<PostgreSqlOffice>;
