using CoachOffice.Domain.Students;

namespace CoachOffice.UseCases.Access;

/// <summary>What an open link to the lessons allows: one student's own bookings, and nothing of plans or of other people.</summary>
public sealed record VisitPass(StudentId StudentId, Guid LinkId);
