using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;
using Diary = CoachOffice.UseCases.Tests.Bookings.Diary;

namespace CoachOffice.UseCases.Tests.Insight;

public abstract class ReadAttendanceTests(OfficeFixture fixture)
{
    private const int FirstDay = 10;
    private const int Days = 8;

    [Fact]
    public async Task Missed_lessons_are_told_apart_by_whether_a_reminder_had_gone_out()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var (ann, ben) = (await diary.Student("Ann"), await diary.Student("Ben"));
        var early = new List<BookingId>();
        for (var day = FirstDay; day < FirstDay + Days; day++) early.Add(await diary.Book(diary.At(At(day, 10), ann)));

        for (var day = FirstDay; day < FirstDay + Days; day++)
        {
            await Remind(diary, day);
            if (day == FirstDay + 1) await diary.Office.Must((SayComing coming) => coming.To(early[1], new VisitPass(ann, Guid.Empty)));
            Now(diary, day, 8);
            var late = await diary.Book(diary.At(At(day, 14), ben));
            Now(diary, day, 18);
            await Mark(diary, early[day - FirstDay], day != FirstDay);
            await Mark(diary, late, day > FirstDay + 1);
        }

        var view = await diary.Office.Must((ReadAttendance read) => read.Of(diary.Office.Coach));

        Assert.Equal((new Missed(3, 16), new Missed(1, 8), new Missed(2, 8), new Missed(0, 1)), (view.All, view.Reminded, view.Others, view.SaidYes));
        Assert.Equal(.5, view.Ratio!.Value, 1e-12);
        Assert.False(view.SaidYes.IsEnough);
        diary.Office.Time.Advance(TimeSpan.FromDays(370));
        Assert.Equal(0, (await diary.Office.Must((ReadAttendance read) => read.Of(diary.Office.Coach))).All.Of);
    }

    [Fact]
    public async Task The_desk_is_not_told() =>
        Assert.Equal(NotAllowed.Code, (await fixture.Office.Refuses((ReadAttendance read) => read.Of(fixture.Office.Desk))).Single().Code);

    private static async Task Remind(Diary diary, int day)
    {
        Now(diary, day - 1, 19);
        await diary.Office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));
    }

    private static async Task Mark(Diary diary, BookingId id, bool came)
    {
        var seat = await diary.Office.Read(db => db.Seats.Where(s => s.BookingId == id).Select(s => s.Id).SingleAsync());
        await diary.Office.Must((MarkAttendance mark) => mark.Of(id, seat, came, diary.Office.Coach));
    }

    private static LocalDateTime At(int day, int hour) => new(2026, 3, day, hour, 0);

    private static void Now(Diary diary, int day, int hour) => diary.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, day, hour, 0, 0, TimeSpan.Zero));
}

public sealed class ReadAttendanceOnSqlite(SqliteOffice office) : ReadAttendanceTests(office), IClassFixture<SqliteOffice>;

public sealed class ReadAttendanceOnPostgreSql(PostgreSqlOffice office) : ReadAttendanceTests(office), IClassFixture<PostgreSqlOffice>;
