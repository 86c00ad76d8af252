using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Regressions;

/// <summary>A double tap on Save ended in a clash with oneself.</summary>
public abstract class SheetPostedTwiceTests(OfficeFixture fixture)
{
    private static readonly LessonHeading Heading = new(new LocalDate(2026, 3, 2), Club.Driver);

    [Fact]
    public async Task The_same_sheet_posted_again_with_the_version_it_was_opened_with_is_saved()
    {
        var (office, lesson) = await Started();

        await office.Must((SaveLesson save) => save.As(lesson, 1, Sheet("14 15"), office.Coach));
        await office.Must((SaveLesson save) => save.As(lesson, 1, Sheet("14 15"), office.Coach));
    }

    [Fact]
    public async Task Two_posts_of_the_same_sheet_at_once_are_both_saved()
    {
        var (office, lesson) = await Started();

        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => office.Must((SaveLesson save) => save.As(lesson, 1, Sheet("14 15"), office.Coach)))));
    }

    [Fact]
    public async Task Another_sheet_with_the_old_version_is_still_a_clash()
    {
        var (office, lesson) = await Started();
        await office.Must((SaveLesson save) => save.As(lesson, 1, Sheet("14 15"), office.Coach));

        var refusals = await office.Refuses((SaveLesson save) => save.As(lesson, 1, Sheet("14 16"), office.Coach));

        Assert.Equal(Clash.Code, refusals.Single().Code);
    }

    /// <summary>A device lost the answer, somebody else saved meanwhile, and the device sends again: its values were kept, so there is nothing to ask.</summary>
    [Fact]
    public async Task A_sheet_sent_again_after_somebody_elses_save_was_kept_the_first_time()
    {
        var (office, lesson) = await Started();
        var sent = Sheet("14 15") with { Send = new Guid(7, 0, 0, [0, 0, 0, 0, 0, 0, 0, 0]) };
        await office.Must((SaveLesson save) => save.As(lesson, 1, sent, office.Coach));
        await office.Must((SaveLesson save) => save.As(lesson, 2, Sheet("14 16"), office.Owner));

        await office.Must((SaveLesson save) => save.As(lesson, 1, sent, office.Coach));

        Assert.Equal([14, 16], (await office.Read(db => db.Lessons.Include(l => l.AllReadings).SingleAsync(l => l.Id == lesson))).Readings.Select(r => r.Value).Order());
    }

    [Fact]
    public async Task Other_values_under_the_same_id_are_no_repeat()
    {
        var (office, lesson) = await Started();
        var sent = Sheet("14 15") with { Send = new Guid(7, 0, 0, [0, 0, 0, 0, 0, 0, 0, 0]) };
        await office.Must((SaveLesson save) => save.As(lesson, 1, sent, office.Coach));

        Assert.Equal(Clash.Code, (await office.Refuses((SaveLesson save) => save.As(lesson, 1, Sheet("14 17") with { Send = sent.Send }, office.Coach))).Single().Code);
    }

    private static LessonForm Sheet(string tilt) => new() { Heading = Heading, Entries = [new MeasureEntry { Measure = "impact-spine-tilt", Text = tilt }], Observations = "Steady", Notes = "" };

    private async Task<(TestOffice Office, LessonId Lesson)> Started()
    {
        var office = await fixture.Another(opened: true);
        var student = await office.Register(AStudent.Named("Double", "Tap"));
        return (office, await office.Must((StartLesson start) => start.For(student, Heading, office.Coach)));
    }
}

public sealed class SheetPostedTwiceOnSqlite(SqliteOffice fixture) : SheetPostedTwiceTests(fixture), IClassFixture<SqliteOffice>;

public sealed class SheetPostedTwiceOnPostgreSql(PostgreSqlOffice fixture) : SheetPostedTwiceTests(fixture), IClassFixture<PostgreSqlOffice>;
