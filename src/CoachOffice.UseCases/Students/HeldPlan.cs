using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Students;

/// <summary>A plan as far as a student's story tells of it.</summary>
public sealed record HeldPlan(PlanId Id, LessonId LessonId, PlanStatus Status, Instant CreatedAt, int Stages, IReadOnlyList<PlanChange> Changes);
