using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings;

public abstract class ChangeBookingTests(OfficeFixture fixture)
{
    private static readonly LocalDateTime Ten = new(2026, 3, 10, 10, 0);

    [Fact]
    public async Task A_move_takes_the_new_time_frees_the_old_and_raises_the_revision()
    {
        var (diary, ann, id) = await Booked();

        await diary.Office.Must((MoveBooking move) => move.To(id, 1, new MoveForm { Start = Ten.PlusMinutes(30), Minutes = 90 }, diary.Office.Desk));

        var booking = await BookLessonTests.Read(diary, id);
        Assert.Equal((1, 90, Instant.FromUtc(2026, 3, 10, 12, 0), diary.Bays[0]), (booking.Sequence, booking.Minutes, booking.Ends, booking.ResourceId));
        await diary.Book(diary.At(Ten.PlusMinutes(-30), await diary.Student("Bob")));
        Assert.Equal("time-taken", (await Refused(diary, new MoveForm { Start = Ten.PlusMinutes(-29) }, id)).Code);
        Assert.Equal(Instant.FromUtc(2026, 3, 10, 10, 30), (await BookLessonTests.Read(diary, id)).Starts);
        Assert.Equal(3, await diary.Office.Read(db => db.TakenTimes.CountAsync(t => t.BookingId == id)));
        Assert.Equal(ann, booking.Seats[0].StudentId);
    }

    [Fact]
    public async Task Who_looks_at_an_older_version_overwrites_nothing()
    {
        var (diary, _, id) = await Booked();
        await diary.Office.Must((MoveBooking move) => move.To(id, 1, new MoveForm { Start = Ten.PlusHours(2) }, diary.Office.Desk));

        var refusal = (await diary.Office.Refuses((MoveBooking move) => move.To(id, 1, new MoveForm { Start = Ten.PlusHours(4) }, diary.Office.Coach))).Single();

        Assert.Equal(Clash.Code, refusal.Code);
        Assert.StartsWith("Dora Desk changed this booking", refusal.Sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(25, SeatStatus.Released)]
    [InlineData(24, SeatStatus.Released)]
    [InlineData(23, SeatStatus.CancelledLate)]
    public async Task The_terms_decide_whether_a_students_cancellation_is_late(int hoursBefore, SeatStatus expected)
    {
        var (diary, _, id) = await Booked();
        diary.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 10, 10, 0, 0, TimeSpan.Zero).AddHours(-hoursBefore));

        await diary.Office.Must((CancelBooking cancel) => cancel.Of(id, null, CancelReason.ByStudent, diary.Office.Desk));

        var booking = await BookLessonTests.Read(diary, id);
        Assert.Equal((BookingStatus.Cancelled, expected, 1), (booking.Status, booking.Seats[0].Status, booking.Sequence));
        await diary.Book(diary.At(Ten, await diary.Student("Bob")));
    }

    [Fact]
    public async Task The_practice_can_cancel_at_any_time_without_cost()
    {
        var (diary, _, id) = await Booked();
        diary.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 10, 9, 59, 0, TimeSpan.Zero));

        await diary.Office.Must((CancelBooking cancel) => cancel.Of(id, 1, CancelReason.ByPractice, diary.Office.Desk));

        Assert.Equal(SeatStatus.Released, (await BookLessonTests.Read(diary, id)).Seats[0].Status);
    }

    [Fact]
    public async Task A_cancellation_is_taken_back_while_everybody_is_free()
    {
        var (diary, _, id) = await Booked();
        await diary.Office.Must((CancelBooking cancel) => cancel.Of(id, 1, CancelReason.ByPractice, diary.Office.Desk));
        await diary.Office.Must((TakeBackCancel back) => back.Of(id, diary.Office.Desk));
        Assert.Equal((BookingStatus.Confirmed, SeatStatus.Booked), await State(diary, id));

        await diary.Office.Must((CancelBooking cancel) => cancel.Of(id, null, CancelReason.ByPractice, diary.Office.Desk));
        await diary.Book(diary.At(Ten, await diary.Student("Bob")));

        Assert.Equal("time-taken", (await diary.Office.Refuses((TakeBackCancel back) => back.Of(id, diary.Office.Desk))).Single().Code);
        Assert.Equal((BookingStatus.Cancelled, SeatStatus.Released), await State(diary, id));
    }

    [Fact]
    public async Task A_group_goes_on_when_one_cancels_and_when_all_do()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var (ann, bob) = (await diary.Student("Ann"), await diary.Student("Bob"));
        var id = await diary.Book(diary.At(Ten, ann, bob) with { OfferingId = diary.Group });
        foreach (var seat in (await BookLessonTests.Read(diary, id)).Seats) await diary.Office.Must((ReleaseSeat release) => release.Of(id, seat.Id, CancelReason.ByStudent, diary.Office.Desk));

        Assert.Equal(4, (await BookLessonTests.Read(diary, id)).FreeSeats);
        await diary.Office.Must((AddSeat add) => add.For(id, ann, diary.Office.Desk));
        Assert.Equal(3, (await BookLessonTests.Read(diary, id)).FreeSeats);
    }

    [Fact]
    public async Task Who_came_is_marked_from_an_hour_before_and_then_nothing_moves()
    {
        var (diary, _, id) = await Booked();
        var seat = (await BookLessonTests.Read(diary, id)).Seats[0].Id;
        Assert.Equal("booking-to-come", (await diary.Office.Refuses((MarkAttendance mark) => mark.Of(id, seat, true, diary.Office.Coach))).Single().Code);
        diary.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 10, 9, 0, 0, TimeSpan.Zero));

        await diary.Office.Must((MarkAttendance mark) => mark.Of(id, seat, false, diary.Office.Coach));
        Assert.Equal((BookingStatus.Confirmed, SeatStatus.NoShow), await State(diary, id));
        Assert.Equal("booking-marked", (await Refused(diary, new MoveForm { Start = Ten.PlusHours(2) }, id)).Code);
        Assert.Equal("booking-marked", (await diary.Office.Refuses((CancelBooking cancel) => cancel.Of(id, null, CancelReason.ByStudent, diary.Office.Desk))).Single().Code);

        await diary.Office.Must((MarkAttendance mark) => mark.Of(id, seat, null, diary.Office.Coach));
        Assert.Equal((BookingStatus.Confirmed, SeatStatus.Booked), await State(diary, id));
    }

    private static async Task<(BookingStatus Booking, SeatStatus Seat)> State(Diary diary, BookingId id)
    {
        var booking = await BookLessonTests.Read(diary, id);
        return (booking.Status, booking.Seats[0].Status);
    }

    private static async Task<Refusal> Refused(Diary diary, MoveForm form, BookingId id) =>
        (await diary.Office.Refuses((MoveBooking move) => move.To(id, null, form, diary.Office.Desk))).Single();

    private async Task<(Diary Diary, StudentId Student, BookingId Booking)> Booked()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var ann = await diary.Student("Ann");
        return (diary, ann, await diary.Book(diary.At(Ten, ann)));
    }
}

public sealed class ChangeBookingOnSqlite(SqliteOffice office) : ChangeBookingTests(office), IClassFixture<SqliteOffice>;

public sealed class ChangeBookingOnPostgreSql(PostgreSqlOffice office) : ChangeBookingTests(office), IClassFixture<PostgreSqlOffice>;
