using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Bookings;
using CoachOffice.UseCases.Tests.Fixtures;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Regressions;

/// <summary>An erased student's coming lessons stayed booked and kept the coach's time.</summary>
public sealed class ErasedStudentsLessonsTests(SqliteOffice fixture) : IClassFixture<SqliteOffice>
{
    private static readonly LocalDateTime Ten = new(2026, 3, 10, 10, 0);

    [Fact]
    public async Task Erasing_a_student_frees_the_time_of_the_lessons_to_come_and_leaves_a_group_to_the_others()
    {
        var diary = await Bookings.Diary.Of(fixture.Office);
        var (gone, other) = (await diary.Student("Gone"), await diary.Student("Other"));
        var alone = await diary.Book(diary.At(Ten, gone));
        var group = await diary.Book(diary.At(Ten.PlusHours(3), gone, other) with { OfferingId = diary.Group });

        await diary.Office.Must((EraseStudent erase) => erase.ForGood(gone, diary.Office.Owner));

        Assert.Equal((BookingStatus.Cancelled, SeatStatus.Released), ((await BookLessonTests.Read(diary, alone)).Status, (await BookLessonTests.Read(diary, alone)).Seats[0].Status));
        Assert.Equal((BookingStatus.Confirmed, 3), ((await BookLessonTests.Read(diary, group)).Status, (await BookLessonTests.Read(diary, group)).FreeSeats));
        Assert.Equal("student-archived", (await diary.Office.Refuses((TakeBackCancel back) => back.Of(alone, diary.Office.Desk))).Single().Code);
        await diary.Book(diary.At(Ten, other));
    }
}
