using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Measuring;

/// <summary>A reading asked for at a stage's end, and what came of it.</summary>
public sealed class Retest
{
    private Retest()
    {
    }

    public Guid Id { get; private set; }

    public PlanId PlanId { get; private set; }

    public StudentId StudentId { get; private set; }

    /// <summary>The rung whose end it belongs to.</summary>
    public Guid StageId { get; private set; }

    /// <summary>The fault it looks at, <c>measure.low</c> or <c>measure.high</c>.</summary>
    public string Fault { get; private set; } = "";

    /// <summary>True for the second look one to two weeks after a first verdict.</summary>
    public bool IsSecondLook { get; private set; }

    /// <summary>In the practice's zone; moves with later practice.</summary>
    public LocalDate DueOn { get; private set; }

    public RetestStatus Status { get; private set; }

    /// <summary>The lesson record that answered it.</summary>
    public LessonId? LessonId { get; private set; }

    /// <summary>Readings the student sent, one a swing with its unit, until a coach looked at them and judged; empty without any.</summary>
    public string Answer { get; private set; } = "";

    /// <summary>The day of the swings the student read.</summary>
    public LocalDate? AnsweredOn { get; private set; }

    public Instant? AnsweredAt { get; private set; }

    /// <summary>The verdict, once there is one.</summary>
    public KeptVerdict? Verdict { get; private set; }

    public Instant? EndedAt { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>Asks for a reading.</summary>
    public static Retest Ask(Guid id, Plan plan, PlanStage stage, LocalDate dueOn, bool isSecondLook)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(stage);
        return new Retest { Id = id, PlanId = plan.Id, StudentId = plan.StudentId, StageId = stage.Id, Fault = stage.Fault, DueOn = dueOn, IsSecondLook = isSecondLook };
    }

    /// <summary>Puts it off.</summary>
    public void MoveTo(LocalDate day) => DueOn = day;

    /// <summary>The student took the reading themselves; it waits for the coach's look. Sent again it takes the place of what was sent.</summary>
    public void TakeAnswer(string readings, LocalDate on, Instant now) => (Answer, AnsweredOn, AnsweredAt) = (readings, on, now);

    /// <summary>Readings are being taken.</summary>
    public void Begin(LessonId lesson) => (Status, LessonId) = (RetestStatus.InProgress, lesson);

    /// <summary>It is judged.</summary>
    public void Judge(KeptVerdict verdict, Instant now) => (Status, Verdict, EndedAt) = (RetestStatus.Completed, verdict, now);

    /// <summary>It is not wanted any more. One that was judged, or ended otherwise, stays as it is.</summary>
    public void Cancel(Instant now)
    {
        if (Status is RetestStatus.Ready or RetestStatus.InProgress) (Status, EndedAt) = (RetestStatus.Cancelled, now);
    }
}
