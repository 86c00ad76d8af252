using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Lessons.Reviews;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Reviews;

/// <summary>A remote review in the queue.</summary>
public sealed record ReviewRow
{
    public required ReviewId Id { get; init; }

    public required StudentId StudentId { get; init; }

    public required string StudentName { get; init; }

    public required Club Club { get; init; }

    public required Instant SubmittedAt { get; init; }

    public required Instant PromisedBy { get; init; }

    public required ReviewStatus Status { get; init; }

    public required LessonId? LessonId { get; init; }

    /// <summary>Who has it; null while nobody opened it and several could.</summary>
    public required AccountId? CoachId { get; init; }

    public required int Clips { get; init; }
}
