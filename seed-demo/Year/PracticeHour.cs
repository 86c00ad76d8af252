using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Plans;
using NodaTime;

namespace CoachOffice.SeedDemo.Year;

/// <summary>Students practise and say so on their private page.</summary>
internal sealed class PracticeHour(Scene scene)
{
    private static readonly string[] Sentences =
    [
        "If the kettle is on, then I do my ten slow ones.",
        "If I come home on Tuesday, then I go into the garage before I sit down.",
        "If the children are in bed, then I stand in front of the hall mirror.",
        "If I park at the range, then the first twenty balls are for this.",
    ];

    private static readonly string[] Comments = ["", "", "", "Felt odd, then better.", "Windy, kept it short.", "Slow ones are fine, faster ones not yet.", "The stick helps a lot.", "Only half an hour tonight."];

    /// <summary>The plan arrived; some write down when they will practise.</summary>
    public async Task Receive(StudentLife life, LocalDate day, CancellationToken stop)
    {
        life.NextPractice = life.Persona.PractisesEvery == 0 ? LocalDate.MinIsoValue : day.PlusDays(1 + life.Chance.Between(0, 1));
        if (life.Persona.PractisesEvery == 0 || !life.Chance.Is(0.3)) return;
        var sentence = life.Chance.Of(Sentences);
        await scene.Office.Must((KeepIfThen keep) => keep.From(sentence, life.Pass!, stop));
    }

    /// <summary>One evening.</summary>
    public async Task Pass(StudentLife life, LocalDate day, CancellationToken stop)
    {
        var since = life.Persona.PractisesEvery is 4 ? 3 : life.Persona.PractisesEvery + life.Chance.Between(-1, 1);
        life.NextPractice = day.PlusDays(since);
        if (scene.Calendar.Before(day) < life.Persona.NoPracticeInLast) return;
        var plan = await scene.Plan(life.Pass!.PlanId, stop);
        if (plan.Status != PlanStatus.Active || (plan.RestartsOn is { } restart && restart > day)) return;
        var form = Form(life, plan, day);
        await scene.Office.Must((RecordCheckIn record) => record.From(form, life.Pass!, stop));
        foreach (var stage in plan.Stages.Where(s => s.Status == StageStatus.Current)) life.Swing.Practised(stage.Content.Fault, since);
    }

    private CheckInForm Form(StudentLife life, Plan plan, LocalDate day)
    {
        var counted = plan.Stages.FirstOrDefault(s => s.Status == StageStatus.Current && s.Gate.Kind == GateKind.Count && IsLearned(s, day));
        var reached = counted is not null && life.Chance.Is(0.8);
        var planned = plan.Stages.Where(s => s.Status == StageStatus.Current).Sum(s => s.Drills.Sum(d => d.MinutesPerSession));
        return new CheckInForm
        {
            Id = scene.Office.Ids.Next(),
            PracticedOn = day,
            Minutes = Math.Max(5, (int)(planned * life.Chance.Within(0.6, 1.2))),
            RepetitionsPercent = life.Chance.Is(0.85) ? Math.Min(100, life.Chance.Between(life.Persona.PractisesEvery > 4 ? 40 : 65, 105)) : null,
            CountReached = reached,
            StageId = reached ? counted!.Id : null,
            Comment = life.Chance.Of(Comments),
        };
    }

    private static bool IsLearned(PlanStage stage, LocalDate day) =>
        stage.StartedOn is { } began && Period.Between(began, day, PeriodUnits.Days).Days >= (stage.Stage == Stage.Rehearse ? 2 : 5);
}
