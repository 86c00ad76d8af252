using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Access;

/// <summary>What an open private link allows: one plan of one student.</summary>
public sealed record LinkPass(StudentId StudentId, PlanId PlanId, Guid LinkId);
