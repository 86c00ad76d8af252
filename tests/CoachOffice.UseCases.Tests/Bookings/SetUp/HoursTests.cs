using CoachOffice.Domain.Access;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Bookings;
using CoachOffice.UseCases.Bookings.SetUp;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Bookings.SetUp;

public abstract class HoursTests(OfficeFixture fixture)
{
    private static readonly LocalDate Today = new(2026, 3, 2);

    [Fact]
    public async Task The_same_hours_said_twice_are_kept_once()
    {
        var (diary, form) = await New();

        Assert.Equal(2, await diary.Office.Must((AddHours add) => add.As(form, diary.Office.Coach)));
        Assert.Equal(0, await diary.Office.Must((AddHours add) => add.As(form, diary.Office.Coach)));

        Assert.Equal([IsoDayOfWeek.Tuesday, IsoDayOfWeek.Thursday], (await View(diary)).Weekly.Select(h => h.Day));
    }

    [Fact]
    public async Task Hours_that_cannot_be_are_refused_with_the_way_out()
    {
        var (diary, form) = await New();
        async Task<string> Code(HoursForm wrong) => (await diary.Office.Refuses((AddHours add) => add.As(wrong, diary.Office.Owner)))[0].Code;

        Assert.Equal("hours-days", await Code(form with { Days = [] }));
        Assert.Equal("hours-until", await Code(form with { Until = form.From }));
        Assert.Equal("hours-valid", await Code(form with { ValidUntil = Today.PlusDays(-1) }));
        Assert.Equal("place-unknown", await Code(form with { PlaceId = Domain.Bookings.PlaceId.From(diary.Private.Value) }));
        Assert.Equal("coach-unknown", await Code(form with { CoachId = diary.Office.Desk.Account!.Value }));
        Assert.Equal(1, await diary.Office.Must((AddHours add) => add.As(form with { Until = LocalTime.Midnight, Days = [IsoDayOfWeek.Friday] }, diary.Office.Owner)));
    }

    /// <summary>Changing hours moves nothing, and says what lies outside since then.</summary>
    [Fact]
    public async Task Hours_that_end_say_how_many_lessons_lie_outside_and_move_none()
    {
        var (diary, form) = await New();
        await diary.Office.Must((AddHours add) => add.As(form, diary.Office.Coach));
        var ann = await diary.Student("Ann");
        var inside = await diary.Book(diary.At(new(2026, 3, 10, 10, 0), ann));
        var later = await diary.Book(diary.At(new(2026, 3, 17, 10, 0), ann));
        var already = await diary.Book(diary.At(new(2026, 3, 18, 10, 0), ann));
        Assert.Equal([already], (await View(diary)).Outside.Select(b => b.Id));

        var tuesday = (await View(diary)).Weekly[0];
        var ended = await diary.Office.Must((EndHours end) => end.After(tuesday.Id, new LocalDate(2026, 3, 10), diary.Office.Coach));

        Assert.Equal((false, 1), (ended.IsGone, ended.NowOutside));
        Assert.Equal([later, already], (await View(diary)).Outside.Select(b => b.Id));
        Assert.Equal(3, await diary.Office.Read(db => db.Bookings.CountAsync(b => b.Sequence == 0)));
        Assert.Equal(0, (await diary.Office.Must((EndHours end) => end.After(tuesday.Id, null, diary.Office.Coach))).NowOutside);
        Assert.Equal([already], (await View(diary)).Outside.Select(b => b.Id));
        var gone = await diary.Office.Must((EndHours end) => end.After(tuesday.Id, Today.PlusDays(-1), diary.Office.Coach));
        Assert.Equal((true, 2), (gone.IsGone, gone.NowOutside));
        Assert.Equal([inside, later, already], (await View(diary)).Outside.Select(b => b.Id));
    }

    [Fact]
    public async Task A_closed_time_says_what_lies_outside_and_can_be_taken_out_and_put_back()
    {
        var (diary, form) = await New();
        await diary.Office.Must((AddHours add) => add.As(form, diary.Office.Coach));
        await diary.Book(diary.At(new(2026, 3, 10, 10, 0), await diary.Student("Ann")));
        var closed = new ExceptionForm { CoachId = Coach(diary), From = new(2026, 3, 10, 0, 0), Until = new(2026, 3, 11, 0, 0), Note = "dentist" };

        Assert.Equal(1, await diary.Office.Must((AddException add) => add.As(closed, diary.Office.Coach)));
        Assert.Equal(0, await diary.Office.Must((AddException add) => add.As(closed, diary.Office.Coach)));
        var kept = Assert.Single((await View(diary)).Exceptions);
        var before = await diary.Office.Must((DropException drop) => drop.Of(kept.Id, diary.Office.Coach));

        Assert.Equal(closed, before);
        Assert.Empty((await View(diary)).Outside);
        Assert.Equal(0, await diary.Office.Must((AddException add) => add.As(closed with { OpenAt = diary.Links, From = new(2026, 3, 14, 10, 0), Until = new(2026, 3, 14, 12, 0) }, diary.Office.Coach)));
        async Task<string> Code(ExceptionForm wrong) => (await diary.Office.Refuses((AddException add) => add.As(wrong, diary.Office.Owner)))[0].Code;
        Assert.Equal("exception-until", await Code(closed with { Until = closed.From }));
        Assert.Equal("exception-until", await Code(closed with { From = new(2026, 3, 29, 1, 30), Until = new(2026, 3, 29, 2, 15) }));
        Assert.Equal("exception-coach", await Code(closed with { CoachId = null, OpenAt = diary.Links }));
    }

    [Fact]
    public async Task A_coach_changes_their_own_hours_alone_and_the_desk_nobodys()
    {
        var (diary, form) = await New();
        await diary.Office.Must((AddHours add) => add.As(form with { CoachId = diary.Office.Owner.Account!.Value }, diary.Office.Owner));
        var owners = (await diary.Office.Do((ReadHours read) => read.Of(diary.Office.Owner.Account!.Value))).Weekly[0].Id;
        await diary.Office.Must((AddException add) => add.As(new ExceptionForm { From = new(2026, 12, 24, 0, 0), Until = new(2026, 12, 27, 0, 0) }, diary.Office.Owner));
        var practice = (await View(diary)).Exceptions[0].Id;

        foreach (var actor in new[] { diary.Office.Coach, diary.Office.Desk, Actor.Student })
        {
            Assert.Equal(NotAllowed.Code, (await diary.Office.Refuses((AddHours add) => add.As(form with { CoachId = diary.Office.Owner.Account!.Value }, actor)))[0].Code);
            Assert.Equal(NotAllowed.Code, (await diary.Office.Refuses((EndHours end) => end.After(owners, Today, actor)))[0].Code);
            Assert.Equal(NotAllowed.Code, (await diary.Office.Refuses((DropException drop) => drop.Of(practice, actor)))[0].Code);
            Assert.Equal(NotAllowed.Code, (await diary.Office.Refuses((AddException add) => add.As(new ExceptionForm { From = new(2026, 4, 1, 0, 0), Until = new(2026, 4, 2, 0, 0) }, actor)))[0].Code);
        }

        Assert.Equal(NotAllowed.Code, (await diary.Office.Refuses((AddHours add) => add.As(form, diary.Office.Desk)))[0].Code);
    }

    private static AccountId Coach(Diary diary) => diary.Office.Coach.Account!.Value;

    private static Task<HoursView> View(Diary diary) => diary.Office.Do((ReadHours read) => read.Of(Coach(diary)));

    private async Task<(Diary Diary, HoursForm Form)> New()
    {
        var diary = await Diary.Of(await fixture.Another(opened: true));
        return (diary, new HoursForm { CoachId = Coach(diary), PlaceId = diary.Range, Days = [IsoDayOfWeek.Thursday, IsoDayOfWeek.Tuesday], From = new(9, 0), Until = new(17, 0), ValidFrom = Today });
    }
}

public sealed class HoursOnSqlite(SqliteOffice office) : HoursTests(office), IClassFixture<SqliteOffice>;

public sealed class HoursOnPostgreSql(PostgreSqlOffice office) : HoursTests(office), IClassFixture<PostgreSqlOffice>;
