using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.SeedDemo.Builders;
using CoachOffice.UseCases.Access;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Tests.Fixtures;
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
