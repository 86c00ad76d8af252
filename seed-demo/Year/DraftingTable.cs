using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Plans;

namespace CoachOffice.SeedDemo.Year;

/// <summary>What a coach does with a draft before it goes out, and with the plan before it.</summary>
internal sealed class DraftingTable(Scene scene)
{
    private static readonly string[] Words =
    [
        "Good work today. Ten minutes often beats an hour once.",
        "Two things only. Leave the rest alone until we meet again.",
        "Please film three swings from the same place before we look at the number again.",
        "Slow first. Nobody at the range is counting your distance.",
    ];

    /// <summary>A plan whose number came home is completed before the next one is drafted.</summary>
    public async Task CloseWhatIsDone(StudentLife life, CancellationToken stop)
    {
        if (life.Plan is not { } id) return;
        var plan = await scene.Plan(id, stop);
        var done = plan.Status == PlanStatus.Active && plan.Stages.Where(s => s.Status == StageStatus.Current).All(s => life.Swing.IsCured(s.Content.Fault));
        if (done) await scene.Office.Must((CompletePlan complete) => complete.Now(id, plan.Version, "In range and steady, on to the next thing.", life.Coach, stop));
    }

    /// <summary>Words on top for most, and a change with its reason for some.</summary>
    public async Task Edit(StudentLife life, PlanId id, CancellationToken stop)
    {
        if (life.Chance.Is(0.6)) await Write(life, id, stop);
        if (!life.Chance.Is(0.4)) return;
        var view = await scene.Office.Do((DraftPage page) => page.Of(id, stop));
        if (view is not { Stages: [var first, ..] } || first.Drills.Count == 0) return;
        var edit = new EditOf { Plan = id, Version = view.Version, StageId = first.Id, Reason = EditReason.NotFeasible };
        var free = first.Choices.Where(c => c.Withheld is null && first.Drills.All(d => d.Drill != c.Drill)).ToList();
        await (life.Chance.Between(0, 3) switch
        {
            0 when first.Drills.Count > 1 => Remove(life, edit, first, stop),
            1 when free.Count > 0 => Swap(life, edit, first, life.Chance.Of(free).Drill, stop),
            2 => Fewer(life, edit, first, stop),
            _ => Reword(life, edit, first, stop),
        });
    }

    private async Task Write(StudentLife life, PlanId id, CancellationToken stop)
    {
        var version = await scene.Office.Read(db => PlanLook.Version(db, id, stop));
        var words = life.Chance.Of(Words);
        await scene.Office.Must((WritePlanMessage write) => write.On(id, version, words, life.Coach, stop));
    }

    private async Task Remove(StudentLife life, EditOf edit, StageView stage, CancellationToken stop) =>
        await scene.Office.Must((RemoveDrill remove) => remove.From(edit with { Reason = EditReason.NotNow, Comment = "One thing less this week." }, stage.Drills[^1].Drill, life.Coach, stop));

    // The body has the last word over the coach, so a swap may be refused; then the draft stays as it is.
    private async Task Swap(StudentLife life, EditOf edit, StageView stage, string instead, CancellationToken stop) =>
        await scene.Office.Do((SwapDrill swap) => swap.For(edit with { Comment = "No room for the other one at home." }, stage.Drills[0].Drill, instead, life.Coach, stop));

    private async Task Fewer(StudentLife life, EditOf edit, StageView stage, CancellationToken stop)
    {
        var drill = stage.Drills[0];
        var counts = Counts(drill) with { Reps = Math.Max(1, drill.Reps * 3 / 4) };
        await scene.Office.Must((ChangeDrill change) =>
            change.In(edit with { Reason = EditReason.DoesNotSuitThisPerson, Comment = "Starts small, keeps at it." }, drill.Drill, counts, life.Coach, stop));
    }

    private async Task Reword(StudentLife life, EditOf edit, StageView stage, CancellationToken stop)
    {
        var drill = stage.Drills[0];
        var counts = Counts(drill) with { Cue = $"{drill.Cue.TrimEnd('.')}, slowly" };
        await scene.Office.Must((ChangeDrill change) => change.In(edit with { Reason = EditReason.Wording }, drill.Drill, counts, life.Coach, stop));
    }

    private static DrillCounts Counts(PlanDrill drill) =>
        new() { Sets = drill.Sets, Reps = drill.Reps, SessionsPerWeek = drill.SessionsPerWeek, MinutesPerSession = drill.MinutesPerSession, Cue = drill.Cue };
}
