using CoachOffice.Domain.Bookings;
using CoachOffice.Domain.Students;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings.Calendars.Feeds;
using CoachOffice.UseCases.Students;
using CoachOffice.UseCases.Tests.Bookings.Mail;
using CoachOffice.UseCases.Tests.Fixtures;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.Calendars;

public abstract class CalendarFeedTests(OfficeFixture fixture)
{
    private static readonly LocalDateTime Start = new(2026, 3, 30, 9, 0);

    [Fact]
    public async Task A_coach_follows_their_own_lessons_with_who_comes()
    {
        var (lessons, alma, ben) = await Scene();
        var office = lessons.Office;
        await lessons.Book(Start, alma, ben);
        var token = await CoachToken(office);

        var feed = await office.Do((OpenFeed open) => open.By(token));

        var calendar = Calendar.Load(feed!.Text)!;
        var lesson = Assert.Single(calendar.Events);
        Assert.Equal(("PUBLISH", "Golf hour (2 of 4)", "Alma Reed\nBen Reed", "CONFIRMED"), (calendar.Method, lesson.Summary, lesson.Description, lesson.Status));
        Assert.Contains("X-WR-CALNAME:Harbour Road Golf Practice: Carl Coach", feed.Text, StringComparison.Ordinal);
        Assert.Empty(lesson.Attendees);
        Assert.DoesNotContain(await TextSearch.Everywhere(office, token), _ => true);
        var owners = TokenIn(await office.Must((MakeCoachFeed make) => make.For(office.Owner)));
        Assert.Empty(Calendar.Load((await office.Do((OpenFeed open) => open.By(owners)))!.Text)!.Events);
    }

    [Fact]
    public async Task A_student_follows_only_what_concerns_them()
    {
        var (lessons, alma, ben) = await Scene();
        var office = lessons.Office;
        await lessons.Book(Start, alma, ben);
        await lessons.Book(Start.PlusDays(1), ben);
        var gone = await lessons.Book(Start.PlusDays(2), alma, ben);
        await lessons.Cancel(gone, alma);
        var token = await StudentToken(office, alma);

        var text = (await office.Do((OpenFeed open) => open.By(token)))!.Text;

        var lesson = Assert.Single(Calendar.Load(text)!.Events);
        Assert.Equal(("Golf hour with Carl Coach", 9), (lesson.Summary, lesson.DtStart!.Hour));
        Assert.DoesNotContain("Ben", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Reed", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_row_is_followed_as_it_stands_and_a_second_program_reads_the_same()
    {
        var (lessons, alma, _) = await Scene();
        var office = lessons.Office;
        var series = await lessons.BookRow(new LocalDateTime(2026, 10, 11, 9, 0), 5, alma);
        var row = await office.Read(db => db.Bookings.Where(b => b.SeriesId == series).OrderBy(b => b.Starts).Select(b => b.Id).ToListAsync());
        await lessons.Move(row[2], new LocalDateTime(2026, 10, 26, 11, 0));
        await lessons.Cancel(row[3]);

        var token = await StudentToken(office, alma);
        var text = (await office.Do((OpenFeed open) => open.By(token)))!.Text;
        var read = await SecondReader.Read(text);

        var expected = new[] { "2026-10-11T08:00:00Z", "2026-10-18T08:00:00Z", "2026-10-26T11:00:00Z", "2026-11-08T09:00:00Z" };
        Assert.Equal(expected, read.Events.Select(e => e.Start));
        Assert.Equal(expected, Calendar.Load(text)!.GetOccurrences<CalendarEvent>().Select(o => o.Period.StartTime.AsUtc.ToString("yyyy-MM-dd'T'HH:mm:ss'Z'", System.Globalization.CultureInfo.InvariantCulture)));
        Assert.Contains("RRULE:FREQ=WEEKLY;COUNT=5", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_held_is_tentative_what_is_long_over_is_left_out_and_the_tag_changes_only_with_the_lessons()
    {
        var (lessons, alma, _) = await Scene();
        var office = lessons.Office;
        await lessons.Book(new LocalDateTime(2025, 12, 1, 9, 0), alma);
        var booking = await lessons.Book(Start, alma);
        var token = await StudentToken(office, alma);
        var first = await office.Do((OpenFeed open) => open.By(token));
        office.Time.Advance(TimeSpan.FromMinutes(5));
        var second = await office.Do((OpenFeed open) => open.By(token));
        await lessons.Move(booking, Start.PlusHours(1));
        var third = await office.Do((OpenFeed open) => open.By(token));

        Assert.Single(Calendar.Load(first!.Text)!.Events);
        Assert.Equal(first.Tag, second!.Tag);
        Assert.NotEqual(first.Text, second.Text);
        Assert.NotEqual(first.Tag, third!.Tag);
        await lessons.Hold(Start.PlusDays(3), alma);
        Assert.Equal(["CONFIRMED", "TENTATIVE"], Calendar.Load((await office.Do((OpenFeed open) => open.By(token)))!.Text)!.Events.OrderBy(e => e.DtStart).Select(e => e.Status));
    }

    [Fact]
    public async Task A_new_address_ends_the_old_one_and_an_ended_one_opens_nothing()
    {
        var office = await fixture.Another(opened: true);
        var one = await CoachToken(office);
        Assert.NotNull(await office.Do((OpenFeed open) => open.By(one)));
        var two = await CoachToken(office);

        Assert.Null(await office.Do((OpenFeed open) => open.By(one)));
        Assert.NotNull(await office.Do((OpenFeed open) => open.By(two)));
        var state = Assert.Single(await office.Must((ReadCoachFeed read) => read.Of(office.Coach)));
        Assert.Equal((office.Now, office.Now), (state.IssuedAt, state.LastOpenedAt!.Value));
        Assert.Equal(1, await office.Must((EndCoachFeed end) => end.Of(office.Coach)));
        Assert.Null(await office.Do((OpenFeed open) => open.By(two)));
        Assert.Empty(await office.Must((ReadCoachFeed read) => read.Of(office.Coach)));
        Assert.Equal(NotAllowed.Code, (await office.Refuses((MakeCoachFeed make) => make.For(office.Desk))).Single().Code);
    }

    [Fact]
    public async Task An_address_ends_with_its_person()
    {
        var (lessons, alma, ben) = await Scene();
        var office = lessons.Office;
        var (coach, erased, archived) = (await CoachToken(office), await StudentToken(office, alma), await StudentToken(office, ben));
        await office.Must((EraseStudent erase) => erase.ForGood(alma, office.Owner));
        await office.Must((ArchiveStudent archive) => archive.Now(ben, office.Owner));
        await office.Must((DisableAccount disable) => disable.Now(office.Coach.Account!.Value, office.Owner));

        foreach (var token in (string[])[coach, erased, archived]) Assert.Null(await office.Do((OpenFeed open) => open.By(token)));
        Assert.Empty(await office.Read(db => db.CalendarFeeds.Where(f => f.StudentId == alma).ToListAsync()));
        await office.Must((RestoreStudent restore) => restore.Now(ben, office.Owner));
        Assert.NotNull(await office.Do((OpenFeed open) => open.By(archived)));
    }

    [Fact]
    public async Task A_student_ends_their_own_address()
    {
        var (lessons, alma, _) = await Scene();
        var office = lessons.Office;
        var token = await StudentToken(office, alma);
        Assert.NotNull(await office.Do((ReadStudentFeed read) => read.Of(Pass(alma))));

        Assert.Equal(1, await office.Do((EndStudentFeed end) => end.Of(Pass(alma))));

        Assert.Null(await office.Do((ReadStudentFeed read) => read.Of(Pass(alma))));
        Assert.Null(await office.Do((OpenFeed open) => open.By(token)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    [InlineData("' OR 1=1 --                                ")]
    public async Task Anything_else_opens_nothing(string token) => Assert.Null(await fixture.Office.Do((OpenFeed open) => open.By(token)));

    private static VisitPass Pass(StudentId student) => new(student, Guid.Empty);

    private static async Task<string> CoachToken(TestOffice office) => TokenIn(await office.Must((MakeCoachFeed make) => make.For(office.Coach)));

    private static async Task<string> StudentToken(TestOffice office, StudentId student) => TokenIn(await office.Do((MakeStudentFeed make) => make.For(Pass(student))));

    private static string TokenIn(Uri address) => Path.GetFileNameWithoutExtension(address.AbsolutePath);

    private async Task<(BookedLessons Lessons, StudentId Alma, StudentId Ben)> Scene()
    {
        var lessons = await BookedLessons.Of(await fixture.Another(opened: true));
        return (lessons, await lessons.Office.Register(AStudent.Named("Alma", "Reed")), await lessons.Office.Register(AStudent.Named("Ben", "Reed")));
    }
}

public sealed class CalendarFeedOnSqlite(SqliteOffice office) : CalendarFeedTests(office), IClassFixture<SqliteOffice>;

public sealed class CalendarFeedOnPostgreSql(PostgreSqlOffice office) : CalendarFeedTests(office), IClassFixture<PostgreSqlOffice>;
