using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>One rung of a plan: the drills of one stage for one fault, and the gate to the next.</summary>
public sealed class PlanStage
{
    private PlanStage()
    {
    }

    public Guid Id { get; private set; }

    public PlanId PlanId { get; private set; }

    /// <summary>Position in the plan, from 1.</summary>
    public int Order { get; private set; }

    /// <summary><c>measure.low</c> or <c>measure.high</c>.</summary>
    public string Fault { get; private set; } = "";

    public Stage Stage { get; private set; }

    public StageStatus Status { get; private set; }

    public IReadOnlyList<PlanDrill> Drills { get; private set; } = [];

    public PlanGate Gate { get; private set; } = new() { Kind = GateKind.Coach, Text = "" };

    /// <summary>The day it became current, in the practice's zone.</summary>
    public LocalDate? StartedOn { get; private set; }

    /// <summary>The day its re-test or gate is due, as planned at its start.</summary>
    public LocalDate? DueOn { get; private set; }

    public LocalDate? EndedOn { get; private set; }

    /// <summary>A rung as drafted.</summary>
    public static PlanStage Of(Guid id, PlanId plan, int order, StageContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        return new PlanStage { Id = id, PlanId = plan, Order = order, Fault = content.Fault.ToString(), Stage = content.Stage, Drills = content.Drills, Gate = content.Gate };
    }

    /// <summary>What it holds.</summary>
    public StageContent Content => new(FaultId.Parse(Fault), Stage, Drills, Gate);

    /// <summary>Becomes the rung worked on.</summary>
    public void Begin(LocalDate today, LocalDate due) => (Status, StartedOn, DueOn) = (StageStatus.Current, today, due);

    /// <summary>Moves the planned end, e.g. after a pause.</summary>
    public void Postpone(LocalDate due) => DueOn = due;

    /// <summary>Its gate opened.</summary>
    public void Finish(LocalDate today) => (Status, EndedOn) = (StageStatus.Done, today);

    /// <summary>The coach leaves it out.</summary>
    public void Skip(LocalDate today) => (Status, EndedOn) = (StageStatus.Skipped, today);

    /// <summary>The coach's change of its drills and gate.</summary>
    public void Rewrite(IReadOnlyList<PlanDrill> drills, PlanGate gate) => (Drills, Gate) = (drills, gate);

    /// <summary>Its place after the coach changed the order.</summary>
    public void MoveTo(int order) => Order = order;
}
