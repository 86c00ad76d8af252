using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>What a stop link allows: to end reminders for one student.</summary>
/// <param name="StudentId">Whose reminders.</param>
/// <param name="PlanId">The plan whose mail carried the link.</param>
/// <param name="Practice">Name of the practice, for the page.</param>
/// <param name="AlreadyStopped">They were stopped before.</param>
public sealed record StopPass(StudentId StudentId, PlanId PlanId, string Practice, bool AlreadyStopped);
