using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>What a coach approved for a student: rungs with drills and gates, made from a draft and owned by the coach.</summary>
public sealed class Plan
{
    private static readonly HashSet<(PlanStatus From, PlanStatus To)> Steps =
    [
        (PlanStatus.Draft, PlanStatus.Active), (PlanStatus.Draft, PlanStatus.Revoked), (PlanStatus.Active, PlanStatus.OnHold), (PlanStatus.OnHold, PlanStatus.Active),
        (PlanStatus.Active, PlanStatus.Completed), (PlanStatus.Active, PlanStatus.Revoked), (PlanStatus.OnHold, PlanStatus.Revoked),
        (PlanStatus.Draft, PlanStatus.EnteredInError), (PlanStatus.Active, PlanStatus.EnteredInError), (PlanStatus.OnHold, PlanStatus.EnteredInError),
        (PlanStatus.Completed, PlanStatus.EnteredInError), (PlanStatus.Revoked, PlanStatus.EnteredInError),
    ];

    private readonly List<PlanStage> _stages = [];
    private readonly List<PlanChange> _changes = [];

    private Plan()
    {
    }

    public PlanId Id { get; private set; }

    public StudentId StudentId { get; private set; }

    public LessonId LessonId { get; private set; }

    public DraftId DraftId { get; private set; }

    public PlanStatus Status { get; private set; }

    /// <summary>A few words from the coach on top of the plan.</summary>
    public string Message { get; private set; } = "";

    /// <summary>The student's own if-then sentence, when they wrote one.</summary>
    public string IfThen { get; private set; } = "";

    public Instant CreatedAt { get; private set; }

    public Instant? ApprovedAt { get; private set; }

    public string? ApprovedBy { get; private set; }

    /// <summary>Reason of the pause while on hold, e.g. <c>pain-report</c>.</summary>
    public string? HoldReason { get; private set; }

    /// <summary>The day practice goes on, as the coach set it when restarting after a pause; null when never paused.</summary>
    public LocalDate? RestartsOn { get; private set; }

    /// <summary>Concurrency token, raised at each save.</summary>
    public int Version { get; private set; }

    /// <summary>Rungs by order.</summary>
    public IReadOnlyList<PlanStage> Stages => [.. _stages.OrderBy(s => s.Order)];

    /// <summary>Its life so far.</summary>
    public IReadOnlyList<PlanChange> Changes => _changes;

    /// <summary>A plan not yet approved, as the draft proposes it.</summary>
    public static Plan Propose(PlanId id, StoredDraft draft, IReadOnlyList<StageContent> stages, INewIds ids)
    {
        ArgumentNullException.ThrowIfNull(draft);
        var plan = new Plan { Id = id, StudentId = draft.StudentId, LessonId = draft.LessonId, DraftId = draft.Id, CreatedAt = draft.MadeAt };
        plan._stages.AddRange(stages.Select((content, index) => PlanStage.Of(ids.Next(), id, index + 1, content)));
        return plan;
    }

    /// <summary>Whether the step is allowed by the table of states.</summary>
    public bool MayBecome(PlanStatus next) => Steps.Contains((Status, next));

    /// <summary>Takes a step; <see cref="MayBecome"/> was asked before.</summary>
    public void Become(PlanStatus next, PlanStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        if (!MayBecome(next)) throw new InvalidOperationException($"A plan that is {Status} cannot become {next}.");
        _changes.Add(new PlanChange { Id = step.Id, PlanId = Id, From = Status, To = next, Reason = step.Reason, At = step.At, By = step.By });
        if (Status == PlanStatus.Draft && next == PlanStatus.Active) (ApprovedAt, ApprovedBy) = (step.At, step.By);
        HoldReason = next == PlanStatus.OnHold ? step.Reason : null;
        Status = next;
    }

    /// <summary>The day practice goes on after a pause.</summary>
    public void RestartOn(LocalDate day) => RestartsOn = day;

    /// <summary>The coach's words on top.</summary>
    public void Write(string message) => Message = message.Trim();

    /// <summary>The student's own sentence.</summary>
    public void Promise(string ifThen) => IfThen = ifThen.Trim();

    /// <summary>Puts the rungs into another order (ids of stages, first to last; all of them).</summary>
    public void Reorder(IReadOnlyList<Guid> order)
    {
        if (order.Count != _stages.Count || !order.ToHashSet().SetEquals(_stages.Select(s => s.Id))) throw new ArgumentException("Name each stage once.", nameof(order));
        for (var place = 0; place < order.Count; place++) _stages.Single(s => s.Id == order[place]).MoveTo(place + 1);
    }
}
