using CoachOffice.Domain.Bookings;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings;

public abstract class BookLessonTests(OfficeFixture fixture)
{
    private static readonly LocalDateTime Ten = new(2026, 3, 10, 10, 0);

    [Fact]
    public async Task A_booking_takes_the_time_of_coach_bay_and_student()
    {
        var (diary, ann) = await New("Ann");

        var id = await diary.Book(diary.At(Ten, ann));

        var booking = await Read(diary, id);
        Assert.Equal((BookingStatus.Confirmed, diary.Bays[0], 0, 1), (booking.Status, booking.ResourceId, booking.Sequence, booking.Version));
        Assert.Equal(Instant.FromUtc(2026, 3, 10, 10, 0), booking.Starts);
        Assert.Equal((ann, SeatStatus.Booked, 4500L), (booking.Seats[0].StudentId, booking.Seats[0].Status, booking.Seats[0].PriceMinor));
        Assert.Equal(3, await diary.Office.Read(db => db.TakenTimes.CountAsync(t => t.BookingId == id)));
    }

    [Fact]
    public async Task One_may_begin_where_another_ends_and_not_a_minute_earlier()
    {
        var (diary, ann) = await New("Ann");
        await diary.Book(diary.At(Ten, ann));

        await diary.Book(diary.At(Ten.PlusHours(1), ann));
        await diary.Book(diary.At(Ten.PlusHours(-1), ann));

        var refusal = await Refusal(diary, diary.At(Ten.PlusMinutes(-59), await diary.Student("Early")));
        Assert.Equal("time-taken", refusal.Code);
        Assert.Equal("Carl Coach is booked from 09:00 to 10:00 then. Pick another time.", refusal.Sentence);
    }

    [Fact]
    public async Task A_student_cannot_be_in_two_lessons_at_once()
    {
        var (diary, ann) = await New("Ann");
        await diary.Book(diary.At(Ten, ann));

        var refusal = await Refusal(diary, diary.At(Ten, ann) with { CoachId = diary.Office.Owner.Account!.Value });

        Assert.Equal("Ann Booker is booked from 10:00 to 11:00 then. Pick another time.", refusal.Sentence);
    }

    [Fact]
    public async Task A_bay_is_picked_while_one_is_free()
    {
        var (diary, ann) = await New("Ann");
        await diary.Book(diary.At(Ten, ann));
        var other = await diary.Book(diary.At(Ten, await diary.Student("Bob")) with { CoachId = diary.Office.Owner.Account!.Value });

        Assert.Equal(diary.Bays[1], (await Read(diary, other)).ResourceId);
        var third = diary.At(Ten.PlusMinutes(30), await diary.Student("Cid")) with { CoachId = diary.Office.Owner.Account!.Value, ResourceId = diary.Bays[0] };
        Assert.Equal("time-taken", (await Refusal(diary, third)).Code);
    }

    [Fact]
    public async Task The_buffer_after_a_lesson_is_the_coachs_and_not_the_students()
    {
        var (diary, ann) = await New("Ann");
        await diary.Book(diary.At(Ten, ann) with { OfferingId = diary.Group });

        Assert.Equal("time-taken", (await Refusal(diary, diary.At(Ten.PlusMinutes(90), await diary.Student("Bob")))).Code);
        await diary.Book(diary.At(Ten.PlusMinutes(90), ann) with { CoachId = diary.Office.Owner.Account!.Value });
        await diary.Book(diary.At(Ten.PlusMinutes(105), await diary.Student("Cid")));
    }

    [Fact]
    public async Task A_coach_needs_the_way_from_one_place_to_the_other()
    {
        var (diary, ann) = await New("Ann");
        await diary.Book(diary.At(Ten, ann));
        var there = diary.At(Ten.PlusHours(1), ann) with { OfferingId = diary.OnCourse, PlaceId = diary.Links };

        var refusal = await Refusal(diary, there with { Start = Ten.PlusMinutes(84) });
        await diary.Book(there with { Start = Ten.PlusMinutes(85) });

        Assert.Equal(("too-far", "The coach is at Harbour Road range close to that time and needs 25 minutes for the way. Pick another time."), (refusal.Code, refusal.Sentence));
    }

    [Fact]
    public async Task The_same_form_sent_twice_is_one_booking()
    {
        var (diary, ann) = await New("Ann");
        var form = diary.At(Ten, ann) with { Id = BookingId.From(Guid.Parse("50000000-0000-0000-0000-000000000001")) };

        Assert.Equal(await diary.Book(form), await diary.Book(form));

        Assert.Equal(1, await diary.Office.Read(db => db.Bookings.CountAsync()));
    }

    [Fact]
    public async Task What_nobody_confirmed_in_time_is_free_again()
    {
        var (diary, ann) = await New("Ann");
        var held = await diary.Book(diary.At(Ten, ann) with { HeldUntil = diary.Office.Now + Duration.FromMinutes(10) });
        var bob = await diary.Student("Bob");
        Assert.Equal("time-taken", (await Refusal(diary, diary.At(Ten, bob))).Code);

        diary.Office.Time.Advance(TimeSpan.FromMinutes(10));
        await diary.Book(diary.At(Ten, bob));

        Assert.Equal((BookingStatus.Lapsed, SeatStatus.Lapsed), ((await Read(diary, held)).Status, (await Read(diary, held)).Seats[0].Status));
    }

    [Fact]
    public async Task A_lesson_on_the_day_the_clocks_change_keeps_its_local_time()
    {
        // 2026-03-29T01:00Z, Europe/London: 01:00 -> 02:00 (IANA tz data, case C-11).
        var (diary, ann) = await New("Ann");
        var before = await diary.Book(diary.At(new LocalDateTime(2026, 3, 28, 9, 0), ann));
        var after = await diary.Book(diary.At(new LocalDateTime(2026, 3, 29, 9, 0), ann));

        Assert.Equal(Duration.FromHours(23), (await Read(diary, after)).Starts - (await Read(diary, before)).Starts);
    }

    [Fact]
    public async Task Across_the_hour_that_comes_twice_instants_are_compared()
    {
        // 2026-10-25T01:00Z, Europe/London: 02:00 -> 01:00. 01:30 is the first 01:30 (RFC 5545 3.3.5), so an hour from then ends at the second 01:30.
        var (diary, ann) = await New("Ann");
        await diary.Book(diary.At(new LocalDateTime(2026, 10, 25, 1, 30), ann));

        Assert.Equal("time-taken", (await Refusal(diary, diary.At(new LocalDateTime(2026, 10, 25, 0, 31), await diary.Student("Bob")))).Code);
        await diary.Book(diary.At(new LocalDateTime(2026, 10, 25, 2, 0), ann));
    }

    [Theory]
    [InlineData("nobody", "booking-students")]
    [InlineData("too-many", "booking-full")]
    [InlineData("twice", "booking-twice")]
    [InlineData("stranger", "student-unknown")]
    [InlineData("no-coach", "coach-unknown")]
    [InlineData("no-place", "place-unknown")]
    [InlineData("other-bay", "bay-unknown")]
    [InlineData("too-long", "booking-minutes")]
    public async Task What_cannot_be_is_refused_with_a_sentence(string circumstance, string code)
    {
        var (diary, ann) = await New("Ann");
        var form = diary.At(Ten, ann);
        var wrong = circumstance switch
        {
            "nobody" => form with { Students = [] },
            "too-many" => form with { Students = [ann, await diary.Student("Bob")] },
            "twice" => form with { OfferingId = diary.Group, Students = [ann, ann] },
            "stranger" => form with { Students = [Domain.Students.StudentId.From(Guid.Parse("00000000-0000-0000-0000-000000000001"))] },
            "no-coach" => form with { CoachId = diary.Office.Desk.Account!.Value },
            "no-place" => form with { PlaceId = PlaceId.From(Guid.Parse("00000000-0000-0000-0000-000000000001")) },
            "other-bay" => form with { OfferingId = diary.OnCourse, PlaceId = diary.Links, ResourceId = diary.Bays[0] },
            _ => form with { Minutes = 721 },
        };

        Assert.Contains(await diary.Office.Refuses((BookLesson book) => book.As(wrong, diary.Office.Desk)), r => r.Code == code);
        Assert.Equal(0, await diary.Office.Read(db => db.TakenTimes.CountAsync()));
    }

    [Fact]
    public async Task A_stranger_books_nothing()
    {
        var (diary, ann) = await New("Ann");

        Assert.Equal(NotAllowed.Code, (await diary.Office.Refuses((BookLesson book) => book.As(diary.At(Ten, ann), Domain.Access.Actor.Student))).Single().Code);
    }

    internal static Task<Booking> Read(Diary diary, BookingId id) => diary.Office.Read(db => db.Bookings.AsNoTracking().Include(b => b.Seats).SingleAsync(b => b.Id == id));

    private static async Task<Domain.Refusal> Refusal(Diary diary, BookingForm form) => (await diary.Office.Refuses((BookLesson book) => book.As(form, diary.Office.Desk))).Single();

    private async Task<(Diary Diary, Domain.Students.StudentId Student)> New(string name)
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        return (diary, await diary.Student(name));
    }
}

public sealed class BookLessonOnSqlite(SqliteOffice office) : BookLessonTests(office), IClassFixture<SqliteOffice>;

public sealed class BookLessonOnPostgreSql(PostgreSqlOffice office) : BookLessonTests(office), IClassFixture<PostgreSqlOffice>;
