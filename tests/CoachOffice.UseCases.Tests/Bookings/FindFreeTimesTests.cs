using CoachOffice.Domain.Access;
using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Tests.Fixtures;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings;

public abstract class FindFreeTimesTests(OfficeFixture fixture)
{
    private static readonly LocalDate Tuesday = new(2026, 3, 10);

    [Fact]
    public async Task Free_times_are_the_hours_without_what_is_booked_busy_or_closed()
    {
        var (diary, ann) = await New();
        await diary.Book(diary.At(Tuesday.At(new(10, 0)), ann));
        await diary.Office.Change(db =>
        {
            db.Add(BusyTime.Of(Guid.Parse("50000000-0000-0000-0000-000000000001"), Coach(diary), "family", new Interval(Instant.FromUtc(2026, 3, 10, 12, 30), Instant.FromUtc(2026, 3, 10, 13, 0))));
            db.Add(HoursException.Closed(Guid.Parse("50000000-0000-0000-0000-000000000002"), null, new LocalSpan(Tuesday.At(new(15, 0)), Tuesday.At(new(23, 0)), DateTimeZoneProviders.Tzdb["Europe/London"]), "storm"));
            return Task.CompletedTask;
        });

        Assert.Equal(["09:00", "11:00", "11:30", "13:00", "13:30", "14:00"], await Times(diary, Question(diary), step: 30));
    }

    [Fact]
    public async Task A_lesson_at_another_place_keeps_the_way_free()
    {
        var (diary, ann) = await New();
        await diary.Book(diary.At(Tuesday.At(new(12, 0)), ann) with { OfferingId = diary.OnCourse, PlaceId = diary.Links });

        Assert.Equal(["09:00", "09:30", "10:00", "10:30", "14:30", "15:00", "15:30", "16:00"], await Times(diary, Question(diary), step: 30));
    }

    [Fact]
    public async Task Without_a_free_bay_there_is_no_time_and_the_students_own_lesson_is_in_the_way_with_any_coach()
    {
        var (diary, ann) = await New();
        var owner = diary.Office.Owner.Account!.Value;
        await diary.Book(diary.At(Tuesday.At(new(10, 0)), ann) with { CoachId = owner });
        await diary.Book(diary.At(Tuesday.At(new(14, 0)), await diary.Student("Bob")) with { CoachId = owner });
        await diary.Book(diary.At(Tuesday.At(new(14, 0)), await diary.Student("Cleo")) with { CoachId = await diary.Office.AnotherCoach() });

        var times = await Times(diary, Question(diary) with { Student = ann }, step: 60);

        Assert.Equal(["09:00", "11:00", "12:00", "13:00", "15:00", "16:00"], times);
    }

    [Fact]
    public async Task A_hold_that_ran_out_is_free_before_the_clock_ends_it_and_a_booking_that_moves_is_in_nobodys_way()
    {
        var (diary, ann) = await New();
        await diary.Book(diary.At(Tuesday.At(new(9, 0)), ann) with { HeldUntil = diary.Office.Now + Duration.FromMinutes(10) });
        var moving = await diary.Book(diary.At(Tuesday.At(new(16, 0)), ann));

        Assert.Equal(["10:00", "11:00", "12:00", "13:00", "14:00", "15:00"], await Times(diary, Question(diary), step: 60));
        diary.Office.Time.Advance(TimeSpan.FromMinutes(10));
        Assert.Equal(["09:00", "10:00", "11:00", "12:00", "13:00", "14:00", "15:00"], await Times(diary, Question(diary), step: 60));
        Assert.Equal(8, (await Times(diary, Question(diary) with { Moving = moving, Student = ann }, step: 60)).Count);
    }

    [Fact]
    public async Task A_student_is_held_to_the_terms_and_to_what_students_may_book()
    {
        var (diary, ann) = await New();
        diary.Office.Time.SetUtcNow(new DateTimeOffset(2026, 3, 10, 0, 30, 0, TimeSpan.Zero));
        Assert.Equal(["13:00", "14:00", "15:00", "16:00"], await Times(diary, Question(diary), step: 60, Actor.Student));
        Assert.Equal(8, (await Times(diary, Question(diary), step: 60)).Count);

        var late = Question(diary) with { From = Tuesday.PlusDays(56), Until = Tuesday.PlusDays(70) };
        Assert.Equal(8, (await Times(diary, late, step: 60, Actor.Student)).Count);
        Assert.Equal(24, (await Times(diary, late, step: 60)).Count);

        var hidden = await diary.Office.Refuses((FindFreeTimes find) => find.For(Question(diary) with { OfferingId = OfferingId.From(ann.Value) }, Actor.Student));
        Assert.Equal("offering-not-found", hidden[0].Code);
        await diary.Office.Change(async db =>
        {
            var offering = await db.Offerings.FindAsync(diary.Private);
            offering!.Change(new OfferingDetails { Name = "Private hour", Kind = OfferingKind.Private, Places = offering.Places, Coaches = offering.Coaches, IsBookable = false });
        });
        Assert.Equal("offering-not-found", (await diary.Office.Refuses((FindFreeTimes find) => find.For(Question(diary), Actor.Student)))[0].Code);
        Assert.NotEmpty(await Times(diary, Question(diary), step: 60));
    }

    [Fact]
    public async Task Any_coach_means_every_coach_who_still_teaches_here()
    {
        var (diary, _) = await New();
        var owner = diary.Office.Owner.Account!.Value;
        await diary.Office.GiveHours(owner, diary.Range, IsoDayOfWeek.Tuesday, "09:00", "11:00");

        Assert.Equal(2, (await Found(diary, Question(diary) with { CoachId = null }, 60)).Count(t => t.Coach == owner));
        await diary.Office.Change(async db => (await db.Users.FindAsync(owner.Value))!.DisabledAt = diary.Office.Now);
        Assert.Equal(0, (await Found(diary, Question(diary) with { CoachId = null }, 60)).Count(t => t.Coach == owner));
    }

    [Fact]
    public async Task More_than_five_weeks_at_once_are_refused()
    {
        var (diary, _) = await New();

        Assert.NotEmpty(await Times(diary, Question(diary) with { Until = Tuesday.PlusDays(34) }, step: 60));
        Assert.Equal("free-times-days", (await diary.Office.Refuses((FindFreeTimes find) => find.For(Question(diary) with { Until = Tuesday.PlusDays(35) }, Actor.Student)))[0].Code);
    }

    /// <summary>Whatever is offered can be booked: each free time of a crowded day, one after the other in calendars of their own making.</summary>
    [Fact]
    public async Task Every_time_that_is_offered_can_be_booked()
    {
        var (diary, ann) = await New();
        await diary.Book(diary.At(Tuesday.At(new(10, 15)), ann));
        await diary.Book(diary.At(Tuesday.At(new(13, 0)), ann) with { OfferingId = diary.Group });
        await diary.Office.GiveHours(Coach(diary), diary.Links, IsoDayOfWeek.Tuesday, "15:00", "20:00");
        await diary.Book(diary.At(Tuesday.At(new(17, 30)), ann) with { OfferingId = diary.OnCourse, PlaceId = diary.Links });
        var bob = await diary.Student("Bob");

        var found = await Found(diary, Question(diary) with { Student = bob, OfferingId = diary.Private }, 15);

        Assert.NotEmpty(found);
        foreach (var time in found)
        {
            var id = await diary.Book(diary.At(time.LocalStart, bob) with { PlaceId = time.Place, CoachId = time.Coach });
            await diary.Office.Must((CancelBooking cancel) => cancel.Of(id, null, CancelReason.ByPractice, diary.Office.Desk));
        }
    }

    [Fact]
    public async Task Staff_are_told_whether_a_coach_is_at_work_then()
    {
        var (diary, _) = await New();
        await diary.Office.GiveHours(Coach(diary), diary.Links, IsoDayOfWeek.Wednesday, "09:00", "12:00");
        Task<WorkThen> At(PlaceId place, int day, int hour) => diary.Office.Do((AtWork work) => work.Of(Coach(diary), place, new Interval(Instant.FromUtc(2026, 3, day, hour, 0), Instant.FromUtc(2026, 3, day, hour + 1, 0))));

        Assert.Equal(WorkThen.Here, await At(diary.Range, 10, 16));
        Assert.Equal(WorkThen.Off, await At(diary.Range, 10, 17));
        Assert.Equal(WorkThen.Elsewhere, await At(diary.Range, 11, 9));
    }

    private static AccountId Coach(Diary diary) => diary.Office.Coach.Account!.Value;

    private static FreeTimesQuestion Question(Diary diary) => new() { OfferingId = diary.Private, CoachId = Coach(diary), From = Tuesday, Until = Tuesday };

    private static async Task<IReadOnlyList<FreeTime>> Found(Diary diary, FreeTimesQuestion question, int step, Actor? actor = null)
    {
        await diary.Office.SetTerms(new BookingTermsDetails { StepMinutes = step });
        return await diary.Office.Must((FindFreeTimes find) => find.For(question, actor ?? diary.Office.Desk));
    }

    private static async Task<IReadOnlyList<string>> Times(Diary diary, FreeTimesQuestion question, int step, Actor? actor = null) =>
        [.. (await Found(diary, question, step, actor)).Select(t => t.LocalStart.ToString("HH:mm", null))];

    private async Task<(Diary Diary, StudentId Student)> New()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        await diary.Office.GiveHours(Coach(diary), diary.Range, IsoDayOfWeek.Tuesday, "09:00", "17:00");
        return (diary, await diary.Student("Ann"));
    }
}

public sealed class FindFreeTimesOnSqlite(SqliteOffice office) : FindFreeTimesTests(office), IClassFixture<SqliteOffice>;

public sealed class FindFreeTimesOnPostgreSql(PostgreSqlOffice office) : FindFreeTimesTests(office), IClassFixture<PostgreSqlOffice>;
