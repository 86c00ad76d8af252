using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Tests.Fixtures;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.UseCases.Tests.Demo;

/// <summary>The year is made in a file and brought over: on the other database it is the same practice.</summary>
[Collection(DemoCollection.Name)]
public sealed class DemoOnPostgreSqlTests(DemoOffice demo, PostgreSqlOffice fixture) : IClassFixture<PostgreSqlOffice>
{
    [Fact]
    public async Task The_same_practice_stands_on_the_other_database()
    {
        var office = await fixture.Another(opened: false);

        var opened = await DemoOffice.OpenIn(office);

        Assert.True(opened.Succeeded);
        Assert.Equal(await Rows(demo.Demo), await Rows(office));
        var today = await office.Do((TodayPage page) => page.For(demo.DemoOwner));
        Assert.NotEmpty(today.Safety);
        Assert.NotEmpty(today.Drafts);
    }

    private static Task<string> Rows(TestOffice office) => office.Read(async db => string.Join(
        ' ', await db.Students.CountAsync(), await db.Lessons.CountAsync(), await db.Readings.CountAsync(), await db.Plans.CountAsync(), await db.CheckIns.CountAsync(), await db.Retests.CountAsync(), await db.Messages.CountAsync(), await db.AuditEntries.CountAsync()));
}
