using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Measuring;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Regressions;

/// <summary>A re-test whose verdict opened the gate was kept as called off: ending the rung's open looks found it still open in the database and judged only in memory.</summary>
public abstract class JudgedRetestTests(OfficeFixture fixture)
{
    [Fact]
    public async Task A_retest_that_opened_the_gate_stays_judged()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        scene.At(3, 9);
        var look = (await scene.Looks()).First(l => l.Status == RetestStatus.Ready);
        var form = new RetestForm { RetestId = look.Id, Version = look.Version, HeldOn = new LocalDate(2026, 3, 9), Entries = [Scene.Entry(Scene.HeadShift, "4 4 4 4 4")] };

        await scene.Office.Must((RecordRetest record) => record.With(form, scene.Office.Coach));

        Assert.Equal(RetestStatus.Completed, (await scene.Looks()).Single(l => l.Id == look.Id).Status);
    }
}

public sealed class JudgedRetestOnSqlite(SqliteOffice office) : JudgedRetestTests(office), IClassFixture<SqliteOffice>;

public sealed class JudgedRetestOnPostgreSql(PostgreSqlOffice office) : JudgedRetestTests(office), IClassFixture<PostgreSqlOffice>;
