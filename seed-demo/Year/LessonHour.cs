using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.SeedDemo.People;
using CoachOffice.SeedDemo.Swings;
using CoachOffice.UseCases.Lessons;
using CoachOffice.UseCases.Plans;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Lessons with their readings, and the plans drafted from them.</summary>
internal sealed class LessonHour(Scene scene)
{
    private const int LongAgo = 130;
    private const int VeryLongAgo = 220;

    private static readonly string[] Observations =
    [
        "Three clips from each side, camera on the marks by the bay.", "Ball flight starts right of the line and turns back.", "Much calmer than last time, strike still wanders.",
        "Left handed bay, camera moved to the other marks.", "Talked through the last weeks first; practised mostly at home.", "Cold morning, five slow swings before filming.",
    ];

    private readonly DraftingTable _table = new(scene);
    private readonly ReadingHour _readings = new(scene);

    /// <summary>One lesson; the draft waits for the evening.</summary>
    public async Task Hold(StudentLife life, LocalDate day, CancellationToken stop)
    {
        var persona = life.Persona;
        var last = scene.Calendar.Before(day) == persona.Lessons[^1] ? persona.LastLesson : LastLesson.Approved;
        var lesson = await scene.Office.Must((StartLesson start) => start.For(life.Id, new LessonHeading(day, persona.Club), life.Coach, stop));
        if (last == LastLesson.Opened) return;
        life.Swing.ShowNext();
        var form = new LessonForm
        {
            Heading = new LessonHeading(day, persona.Club),
            Entries = Sheet.Of(life.Swing, persona.Swings, asRead: life.Seat % 5 == 0),
            Observations = life.Chance.Of(Observations),
            Notes = life.Chance.Is(0.25) ? "Ask about practice before the next one." : "",
        };
        await scene.Office.Must((SaveLesson save) => save.As(lesson, 1, form, life.Coach, stop));
        await _readings.Pass(life, lesson, day, stop);
        if (last == LastLesson.Recorded || LeavesItAlone(life, day)) return;
        await _table.CloseWhatIsDone(life, stop);
        var plan = await scene.Office.Must((DraftPlan draft) => draft.For(lesson, life.Coach, stop));
        await _table.Edit(life, plan, stop);
        if (last == LastLesson.Approved) life.ToApprove = plan;
    }

    // In the first months the academy still drafted by hand, so only some lessons of then have a plan here.
    private bool LeavesItAlone(StudentLife life, LocalDate day)
    {
        var before = scene.Calendar.Before(day);
        return life.Persona.Happens.Count == 0 && before > LongAgo && life.Chance.Is(before > VeryLongAgo ? 0.95 : 0.8);
    }

    /// <summary>The evening: what asks for work goes out, what does not is thrown away.</summary>
    public async Task Approve(StudentLife life, LocalDate day, CancellationToken stop)
    {
        var id = life.ToApprove!.Value;
        life.ToApprove = null;
        var plan = await scene.Plan(id, stop);
        if (plan.Stages.Count == 0)
        {
            await scene.Office.Must((RevokePlan revoke) => revoke.Now(id, plan.Version, "Nothing to work on, well done.", life.Coach, stop));
            return;
        }

        await scene.Office.Must((ApprovePlan approve) => approve.Now(id, plan.Version, life.Coach, stop));
        (life.Plan, life.PlanFrom, life.Pass) = (id, day, null);
    }
}
