using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>One change of one rung, at hand.</summary>
internal sealed record StageChange(EditOf Edit, Plan Plan, PlanStage Stage, Actor Actor);
