using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.UseCases.Insight;
using CoachOffice.UseCases.Measuring;
using CoachOffice.UseCases.Tests.Fixtures;
using CoachOffice.UseCases.Tests.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Tests.Insight;

public abstract class ReadMeasureHistoryTests(OfficeFixture fixture)
{
    [Fact]
    public async Task Lesson_and_retest_stand_in_order_of_time_with_error_range_verdict_and_the_time_worked_on()
    {
        var scene = await Retested();

        var history = (await Of(scene)).Measures.Single(m => m.Measure.Id.Value == Scene.HeadShift);

        Assert.Equal([(LessonKind.Lesson, 12d, 3), (LessonKind.Retest, 4d, 5)], history.Points.Select(p => (p.Kind, p.Value, p.Readings)));
        Assert.Equal(Math.Sqrt(Square(history.Measure.SetupError) + (Square(history.Measure.SwingError) / 5)), history.Points[1].StandardError, 1e-9);
        Assert.Equal((Grade.InRange, Movement.MovedToward), (history.Points[1].Grade, history.Points[1].Verdict!.Movement));
        Assert.Null(history.Points[0].Verdict);
        Assert.NotNull(history.Wanted);
        Assert.Contains(history.Work, w => w.Until is not null);
        Assert.Null(history.Trend);
    }

    [Fact]
    public async Task What_a_plan_worked_on_comes_first()
    {
        var measures = (await Of(await Retested())).Measures;

        Assert.Equal(Scene.HeadShift, measures[0].Measure.Id.Value);
        Assert.All(measures.Skip(1), m => Assert.Empty(m.Work));
        Assert.Equal(measures.Skip(1).Select(m => m.Measure.Row).Order(), measures.Skip(1).Select(m => m.Measure.Row));
    }

    [Fact]
    public async Task An_unknown_student_is_not_there()
    {
        var office = await fixture.Another(opened: true);

        Assert.Null(await office.Do((ReadMeasureHistory read) => read.Of(StudentId.From(Guid.Parse("00000000-0000-0000-0000-000000000009")))));
    }

    private static Task<MeasureHistories> Of(Scene scene) => scene.Office.Do(async (ReadMeasureHistory read) => (await read.Of(scene.Student))!);

    private static double Square(double value) => value * value;

    private async Task<Scene> Retested()
    {
        var scene = await Scene.Approved(await fixture.Another(opened: true));
        scene.At(3, 9);
        var look = (await scene.Looks()).First(l => l.Status == RetestStatus.Ready);
        var form = new RetestForm { RetestId = look.Id, Version = look.Version, HeldOn = new LocalDate(2026, 3, 9), Entries = [Scene.Entry(Scene.HeadShift, "4 4 4 4 4")] };
        await scene.Office.Must((RecordRetest record) => record.With(form, scene.Office.Coach));
        return scene;
    }
}

public sealed class ReadMeasureHistoryOnSqlite(SqliteOffice office) : ReadMeasureHistoryTests(office), IClassFixture<SqliteOffice>;

public sealed class ReadMeasureHistoryOnPostgreSql(PostgreSqlOffice office) : ReadMeasureHistoryTests(office), IClassFixture<PostgreSqlOffice>;
