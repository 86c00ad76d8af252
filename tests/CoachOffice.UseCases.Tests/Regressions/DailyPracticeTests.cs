using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using Microsoft.EntityFrameworkCore;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Regressions;

/// <summary>A student who practised every evening moved the re-test on every evening: it never came due and nobody saw it.</summary>
public abstract class DailyPracticeTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_student_who_never_rests_comes_to_the_coach_some_days_after_the_stage_has_ended()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        var end = (await scene.Looks()).Single().DueOn;
        for (var day = new LocalDate(2026, 3, 3); day <= end.PlusDays(3); day = day.PlusDays(1))
        {
            scene.At(day.Month, day.Day, 18);
            await scene.CheckIn(scene.Practised());
        }

        var today = await scene.Office.Do((TodayPage page) => page.For(scene.Office.Coach));

        var row = Assert.Single(today.Retests);
        Assert.Equal((true, end), (row.RestFirst, row.DueOn));
    }

    [Fact]
    public async Task A_student_who_has_stopped_practising_is_left_to_the_day_the_retest_moved_to()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        var end = (await scene.Looks()).Single().DueOn;
        scene.At(end.Month, end.Day, 18);
        await scene.CheckIn(scene.Practised());
        await scene.Office.Change(db => db.Retests.ExecuteUpdateAsync(r => r.SetProperty(x => x.DueOn, end.PlusDays(9))));
        scene.At(end.Month, end.Day + 5, 18);

        Assert.Empty((await scene.Office.Do((TodayPage page) => page.For(scene.Office.Coach))).Retests);
    }
}

public sealed class DailyPracticeOnSqlite(SqliteOffice fixture) : DailyPracticeTests(fixture), IClassFixture<SqliteOffice>;

public sealed class DailyPracticeOnPostgreSql(PostgreSqlOffice fixture) : DailyPracticeTests(fixture), IClassFixture<PostgreSqlOffice>;
