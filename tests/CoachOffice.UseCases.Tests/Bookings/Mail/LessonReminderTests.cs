using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.FollowUps;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.Visits;
using CoachOffice.UseCases.FollowUps;
using CoachOffice.UseCases.FollowUps.ByTime;
using CoachOffice.UseCases.FollowUps.Wordings;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using MimeKit;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.Mail;

public abstract class LessonReminderTests(OfficeFixture fixture)
{
    private static readonly LocalDateTime Ten = new(2026, 3, 10, 10, 0);
    private static readonly Instant DayBefore = Instant.FromUtc(2026, 3, 9, 10, 0);

    [Fact]
    public async Task A_booking_brings_its_reminder_a_day_before_and_it_moves_and_ends_with_it()
    {
        var (diary, _, id) = await Booked();
        Assert.Equal((DayBefore, MessageState.Waiting), await Only(diary));

        await diary.Office.Must((MoveBooking move) => move.To(id, null, new MoveForm { Start = Ten.PlusDays(2) }, diary.Office.Desk));
        Assert.Equal((DayBefore + Duration.FromDays(2), MessageState.Waiting), await Only(diary));

        await diary.Office.Must((CancelBooking cancel) => cancel.Of(id, null, CancelReason.ByStudent, diary.Office.Desk));
        Assert.Empty(await Open(diary));
        await diary.Office.Must((TakeBackCancel back) => back.Of(id, diary.Office.Desk));
        Assert.Equal((DayBefore + Duration.FromDays(2), MessageState.Waiting), await Only(diary));
    }

    [Fact]
    public async Task A_lesson_booked_within_the_day_brings_none()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var ann = await diary.Student("Ann");
        At(diary, 9, 12);

        await diary.Book(diary.At(Ten, ann));

        Assert.Empty(await Open(diary));
    }

    [Fact]
    public async Task It_asks_with_two_pages_and_who_has_said_yes_is_not_asked()
    {
        var (diary, ann, id) = await Booked();
        await Sweep(diary);
        At(diary, 9, 11);
        await Sweep(diary);

        var mail = Directory.GetFiles(Path.Combine(diary.Office.Folder, "mail"), "lesson-reminder.*.eml").Select(file => MimeMessage.Load(file)).Single();
        Assert.Contains($"/coming/{id.Value:N}", mail.TextBody, StringComparison.Ordinal);
        Assert.Contains($"/cancel/{id.Value:N}", mail.TextBody, StringComparison.Ordinal);

        var second = await diary.Book(diary.At(Ten.PlusDays(3), ann));
        await diary.Office.Must((SayComing coming) => coming.To(second, new VisitPass(ann, Guid.Empty)));
        Assert.Empty(await Open(diary));
        Assert.NotNull((await BookLessonTests.Read(diary, second)).Seats[0].ComingAt);
    }

    [Fact]
    public async Task Who_said_yes_is_asked_again_when_the_lesson_moves()
    {
        var (diary, ann, id) = await Booked();
        await diary.Office.Must((SayComing coming) => coming.To(id, new VisitPass(ann, Guid.Empty)));

        await diary.Office.Must((MoveBooking move) => move.To(id, null, new MoveForm { Start = Ten.PlusDays(1) }, diary.Office.Desk));

        Assert.Null((await BookLessonTests.Read(diary, id)).Seats[0].ComingAt);
        Assert.Equal((DayBefore + Duration.FromDays(1), MessageState.Waiting), await Only(diary));
    }

    [Fact]
    public async Task Nobody_says_yes_to_somebody_elses_lesson_or_to_one_that_has_begun()
    {
        var (diary, ann, id) = await Booked();
        var ben = await diary.Student("Ben");

        Assert.Equal("lesson-not-found", (await diary.Office.Do((SayComing coming) => coming.To(id, new VisitPass(ben, Guid.Empty)))).Refusals[0].Code);
        At(diary, 10, 10, 30);
        Assert.Equal("lesson-begun", (await diary.Office.Do((SayComing coming) => coming.To(id, new VisitPass(ann, Guid.Empty)))).Refusals[0].Code);
    }

    [Fact]
    public async Task After_days_of_silence_lessons_that_are_over_are_not_spoken_of_and_those_that_come_are_once()
    {
        var (diary, ann, _) = await Booked();
        await diary.Book(diary.At(Ten.PlusDays(3), ann));
        At(diary, 12, 11);

        await Sweep(diary);
        await Sweep(diary);

        var reminders = await diary.Office.Read(db => db.Messages.Where(m => m.Kind == MessageKind.LessonReminder).OrderBy(m => m.DueAt).Select(m => m.State).ToListAsync());
        Assert.Equal([MessageState.Skipped, MessageState.Sent], reminders);
    }

    [Fact]
    public async Task The_clock_adds_what_is_missing_once_however_often_it_runs()
    {
        var (diary, _, _) = await Booked();
        await diary.Office.Change(db => db.Messages.Where(m => m.Kind == MessageKind.LessonReminder).ExecuteDeleteAsync());

        Assert.Equal(1, await diary.Office.Do((WriteByTime write) => write.Once()));
        Assert.Equal(0, await diary.Office.Do((WriteByTime write) => write.Once()));
        Assert.Equal((DayBefore, MessageState.Waiting), await Only(diary));
    }

    [Fact]
    public async Task Other_hours_and_off_hold_for_what_waits_already()
    {
        var (diary, _, _) = await Booked();
        await Rule(diary, 0, new MessageRuleDetails(true, 3, true));
        Assert.Equal((Instant.FromUtc(2026, 3, 10, 9, 0), MessageState.AwaitsApproval), await Only(diary));

        await Rule(diary, 1, new MessageRuleDetails(false, 3, true));
        Assert.Empty(await Open(diary));
        Assert.Equal(0, await diary.Office.Do((WriteByTime write) => write.Once()));
    }

    private static Task<int> Rule(Diary diary, int version, MessageRuleDetails details) => diary.Office.Must((ChangeRule change) => change.To(MessageKind.LessonReminder, version, details, diary.Office.Owner));

    private static async Task<(Instant, MessageState)> Only(Diary diary) => Assert.Single(await Open(diary));

    private static Task<List<(Instant, MessageState)>> Open(Diary diary) => diary.Office.Read(async db =>
        (await db.Messages.AsNoTracking().Where(m => m.Kind == MessageKind.LessonReminder && (m.State == MessageState.Waiting || m.State == MessageState.AwaitsApproval)).ToListAsync()).ConvertAll(m => (m.DueAt, m.State)));

    private static Task<SweepResult> Sweep(Diary diary) => diary.Office.Do((SweepMessages sweep) => sweep.Once(CancellationToken.None));

    private static void At(Diary diary, int day, int hour, int minute = 0) => diary.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, day, hour, minute, 0, TimeSpan.Zero));

    private async Task<(Diary Diary, StudentId Student, BookingId Booking)> Booked()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        var ann = await diary.Student("Ann");
        return (diary, ann, await diary.Book(diary.At(Ten, ann)));
    }
}

public sealed class LessonReminderOnSqlite(SqliteOffice office) : LessonReminderTests(office), IClassFixture<SqliteOffice>;

public sealed class LessonReminderOnPostgreSql(PostgreSqlOffice office) : LessonReminderTests(office), IClassFixture<PostgreSqlOffice>;
