using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings;

public abstract class SeriesTests(OfficeFixture fixture)
{
    private static readonly LocalDateTime First = new(2026, 3, 16, 18, 0);

    [Fact]
    public async Task A_row_of_lessons_keeps_its_local_time_across_the_change_of_clocks()
    {
        // Europe/London goes from +00:00 to +01:00 on 2026-03-29 (IANA tz data, case C-11).
        var (diary, ann) = await New();

        var row = await Book(diary, ann, "FREQ=WEEKLY;COUNT=4");

        var made = await Read(diary);
        Assert.Equal(row.Bookings, made.Select(b => b.Id));
        Assert.All(made, b => Assert.Equal(new LocalTime(18, 0), b.LocalStart.TimeOfDay));
        Assert.Equal([18, 18, 17, 17], made.Select(b => b.Starts.InUtc().Hour));
        Assert.All(made, b => Assert.Equal(b.LocalStart, b.SeriesStart));
        Assert.Equal(1, await diary.Office.Read(db => db.Messages.CountAsync(m => m.Kind == MessageKind.BookingInvitation)));
    }

    [Fact]
    public async Task When_one_time_is_taken_nothing_is_booked_or_that_one_is_left_out()
    {
        var (diary, ann) = await New();
        await diary.Book(diary.At(First.PlusDays(7), await diary.Student("Bob")));

        var refusals = await diary.Office.Refuses((BookSeries book) => book.As(Form(diary, ann, "FREQ=WEEKLY;COUNT=3"), diary.Office.Desk));
        Assert.StartsWith("Mon 23 Mar, 18:00: Carl Coach is booked", Assert.Single(refusals).Sentence, StringComparison.Ordinal);
        Assert.Single(await Read(diary));

        var row = await Book(diary, ann, "FREQ=WEEKLY;COUNT=3", skip: true);
        Assert.Equal((2, First.PlusDays(7)), (row.Bookings.Count, Assert.Single(row.Skipped)));
    }

    [Fact]
    public async Task The_same_form_sent_twice_is_one_row()
    {
        var (diary, ann) = await New();
        var form = Form(diary, ann, "FREQ=WEEKLY;INTERVAL=2;COUNT=5");
        form = form with { First = form.First with { Id = BookingId.From(Guid.Parse("50000000-0000-0000-0000-000000000009")) } };

        var one = await diary.Office.Must((BookSeries book) => book.As(form, diary.Office.Desk));
        var two = await diary.Office.Must((BookSeries book) => book.As(form, diary.Office.Desk));

        Assert.Equal(one.Bookings, two.Bookings);
        Assert.Equal(5, (await Read(diary)).Count);
    }

    [Fact]
    public async Task One_of_a_row_is_moved_and_the_rest_cancelled_from_a_day_on()
    {
        var (diary, ann) = await New();
        var row = await Book(diary, ann, "FREQ=WEEKLY;COUNT=4");
        await diary.Office.Must((MoveBooking move) => move.To(row.Bookings[1], null, new MoveForm { Start = First.PlusDays(8) }, diary.Office.Desk));

        var count = await diary.Office.Must((CancelRest cancel) => cancel.From(row.Bookings[2], CancelReason.ByPractice, diary.Office.Desk));

        var made = await Read(diary);
        Assert.Equal(2, count);
        Assert.Equal([BookingStatus.Confirmed, BookingStatus.Confirmed, BookingStatus.Cancelled, BookingStatus.Cancelled], made.Select(b => b.Status));
        Assert.Equal((First.PlusDays(8), First.PlusDays(7), 1), (made[1].LocalStart, made[1].SeriesStart, made[1].Sequence));
        await diary.Book(diary.At(First.PlusDays(14), await diary.Student("Bob")));
    }

    [Fact]
    public async Task A_row_booked_and_its_rest_cancelled_are_one_letter_each()
    {
        var (diary, ann) = await New();
        var row = await Book(diary, ann, "FREQ=WEEKLY;COUNT=4");
        Assert.Equal(1, await Letters(diary));

        await diary.Office.Must((CancelRest cancel) => cancel.From(row.Bookings[1], CancelReason.ByPractice, diary.Office.Desk));

        Assert.Equal(1, await Letters(diary));
        Assert.Equal([MessageKind.BookingInvitation, MessageKind.BookingCancelled], await diary.Office.Read(db => db.Messages.Where(m => m.Kind != MessageKind.LessonReminder).OrderBy(m => m.CreatedAt).Select(m => m.Kind).ToListAsync()));
    }

    [Theory]
    [InlineData("FREQ=WEEKLY")]
    [InlineData("FREQ=WEEKLY;COUNT=1")]
    [InlineData("FREQ=WEEKLY;COUNT=105")]
    public async Task A_row_without_end_or_far_too_long_is_refused(string rule)
    {
        var (diary, ann) = await New();

        Assert.Equal("series-rule", (await diary.Office.Refuses((BookSeries book) => book.As(Form(diary, ann, rule), diary.Office.Desk))).Single().Code);
    }

    private static SeriesForm Form(Diary diary, StudentId student, string rule, bool skip = false) => new(diary.At(First, student), rule, skip);

    private static Task<SeriesBooked> Book(Diary diary, StudentId student, string rule, bool skip = false) => diary.Office.Must((BookSeries book) => book.As(Form(diary, student, rule, skip), diary.Office.Desk));

    private static async Task<int> Letters(Diary diary)
    {
        diary.Office.Time.Advance(TimeSpan.FromMinutes(2));
        return (await diary.Office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None))).Sent;
    }

    private static Task<List<Booking>> Read(Diary diary) => diary.Office.Read(db => db.Bookings.AsNoTracking().OrderBy(b => b.Starts).ToListAsync());

    private async Task<(Diary Diary, StudentId Student)> New()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        return (diary, await diary.Student("Ann"));
    }
}

public sealed class SeriesOnSqlite(SqliteOffice office) : SeriesTests(office), IClassFixture<SqliteOffice>;

public sealed class SeriesOnPostgreSql(PostgreSqlOffice office) : SeriesTests(office), IClassFixture<PostgreSqlOffice>;
