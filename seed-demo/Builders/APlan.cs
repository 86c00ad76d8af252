using CoachOffice.Domain;
using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.SeedDemo.Builders;

/// <summary>Plans by hand, for tests of what surrounds a plan; real ones come from the drafter.</summary>
public static class APlan
{
    /// <summary>A rulebook's hash for drafts that nobody reads.</summary>
    public static string BookHash { get; } = new('a', 64);

    /// <summary>A stored draft of a lesson without content.</summary>
    public static StoredDraft DraftOf(Lesson lesson, INewIds ids)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(ids);
        return new StoredDraft
        {
            Id = DraftId.From(ids.Next()),
            LessonId = lesson.Id,
            StudentId = lesson.StudentId,
            Json = "{}",
            InputJson = "{}",
            InputSha256 = new string('b', 64),
            RulebookSha256 = BookHash,
            Engine = "1",
            MadeAt = lesson.CreatedAt,
            MadeBy = AccountId.From(lesson.CoachId.Value),
        };
    }

    /// <summary>A plan of two rungs for one fault.</summary>
    public static Plan From(StoredDraft draft, INewIds ids)
    {
        ArgumentNullException.ThrowIfNull(ids);
        return Plan.Propose(PlanId.From(ids.Next()), draft, [Rung(Stage.Rehearse), Rung(Stage.Half)], ids);
    }

    private static StageContent Rung(Stage stage) => new(
        FaultId.Parse("impact-spine-tilt.low"),
        stage,
        [new PlanDrill { Drill = "shadow-turn", Name = "Shadow turn", Sets = 2, Reps = 10, SessionsPerWeek = 3, MinutesPerSession = 10, Cue = "Turn around a quiet head.", Steps = ["Stand as to a ball."], DoneWhen = "8 of 10 on two days" }],
        new PlanGate { Kind = GateKind.Measure, Measure = "impact-spine-tilt", AtLeast = 5, AtMost = 15, Readings = 3, Text = "Tilt in range over three swings." });
}
