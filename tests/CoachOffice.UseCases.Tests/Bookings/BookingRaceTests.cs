using CoachOffice.Data;
using CoachOffice.Domain;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings;

/// <summary>A hundred at once. Whole form: 20 rounds each (COACHOFFICE_FULL_PROOF=1).</summary>
public abstract class BookingRaceTests(OfficeFixture fixture)
{
    private const int Many = 100;
    private static readonly LocalDateTime Ten = new(2026, 3, 10, 10, 0);
    private static readonly int Rounds = Environment.GetEnvironmentVariable("COACHOFFICE_FULL_PROOF") == "1" ? 20 : 2;

    [Fact]
    public async Task Of_a_hundred_who_want_one_time_one_gets_it_and_ninety_nine_are_told()
    {
        var (diary, students) = await Everybody();
        for (var round = 0; round < Rounds; round++)
        {
            var day = Ten.PlusDays(round);

            var outcomes = await AtOnce(diary, [.. students.Select(s => diary.At(day, s))]);

            Assert.Single(outcomes, o => o.Succeeded);
            Assert.All(outcomes.Where(o => !o.Succeeded), o => Assert.Equal("time-taken", Assert.Single(o.Refusals).Code));
        }

        await NothingOverlaps(diary, Rounds);
    }

    [Fact]
    public async Task Starts_that_overlap_crosswise_never_share_a_minute_of_coach_bay_or_student()
    {
        var (diary, students) = await Everybody();
        var chance = new Random(7);
        for (var round = 0; round < Rounds; round++)
        {
            var day = Ten.PlusDays(round);
            var forms = students.Select(_ => diary.At(day.PlusMinutes(15 * chance.Next(9)), students[chance.Next(20)]) with { CoachId = (chance.Next(2) == 0 ? diary.Office.Coach : diary.Office.Owner).Account!.Value }).ToList();

            var outcomes = await AtOnce(diary, forms);

            Assert.InRange(outcomes.Count(o => o.Succeeded), 2, 6);
            Assert.All(outcomes.Where(o => !o.Succeeded), o => Assert.Equal("time-taken", Assert.Single(o.Refusals).Code));
        }

        await NothingOverlaps(diary, 0);
    }

    [Fact]
    public async Task A_group_of_four_takes_four_of_a_hundred()
    {
        var (diary, students) = await Everybody();
        var group = await diary.Book(diary.At(Ten) with { OfferingId = diary.Group });

        var outcomes = await Task.WhenAll(students.Select(s => Task.Run(() => diary.Office.Do((AddSeat add) => add.For(group, s, diary.Office.Desk)))));

        Assert.Equal(4, outcomes.Count(o => o.Succeeded));
        Assert.All(outcomes.Where(o => !o.Succeeded), o => Assert.Equal("booking-full", Assert.Single(o.Refusals).Code));
        Assert.Equal(4, await diary.Office.Read(db => db.Seats.CountAsync(s => s.BookingId == group)));
    }

    [Fact]
    public async Task The_database_refuses_an_overlap_by_itself()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var (ann, bob) = (await diary.Student("Ann"), await diary.Student("Bob"));
        await diary.Book(diary.At(Ten, ann));
        var other = await diary.Book(diary.At(Ten.PlusHours(1), bob));

        var saved = await diary.Office.Read(async db =>
        {
            var booking = await db.Bookings.Include(b => b.Seats).SingleAsync(b => b.Id == other);
            booking.MoveTo(booking.Time with { LocalStart = Ten.PlusMinutes(30) }, booking.Where);
            await db.TakenTimes.Where(t => t.BookingId == other).ExecuteDeleteAsync();
            db.TakenTimes.Add(TakenTime.Of(Guid.Parse("60000000-0000-0000-0000-000000000001"), booking, TimeHolder.Of(booking.CoachId)));
            return await db.TrySave(CancellationToken.None);
        });

        Assert.Equal(Saved.TimeTaken, saved);
    }

    private static Task<Outcome<BookingId>[]> AtOnce(Diary diary, IReadOnlyList<BookingForm> forms) =>
        Task.WhenAll(forms.Select(form => Task.Run(() => diary.Office.Do((BookLesson book) => book.As(form, diary.Office.Desk)))));

    private static async Task NothingOverlaps(Diary diary, int bookings)
    {
        var taken = await diary.Office.Read(db => db.TakenTimes.AsNoTracking().ToListAsync());
        Assert.Empty(from one in taken from other in taken where one.Id != other.Id && one.Holder == other.Holder && one.From < other.Until && other.From < one.Until select one);
        if (bookings > 0) Assert.Equal(bookings, await diary.Office.Read(db => db.Bookings.CountAsync()));
    }

    private async Task<(Diary Diary, IReadOnlyList<StudentId> Students)> Everybody()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var students = new List<StudentId>();
        for (var n = 0; n < Many; n++) students.Add(await diary.Student($"Student{n}"));
        return (diary, students);
    }
}

public sealed class BookingRaceOnSqlite(SqliteOffice office) : BookingRaceTests(office), IClassFixture<SqliteOffice>;

public sealed class BookingRaceOnPostgreSql(PostgreSqlOffice office) : BookingRaceTests(office), IClassFixture<PostgreSqlOffice>;
