using CoachOffice.Domain.Measuring;

namespace CoachOffice.Domain.Plans;

/// <summary>What a rung of a plan holds.</summary>
public sealed record StageContent(FaultId Fault, Stage Stage, IReadOnlyList<PlanDrill> Drills, PlanGate Gate);
