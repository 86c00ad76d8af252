using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.FollowUps;

/// <summary>A message to be written.</summary>
public sealed record DueMessage
{
    public required MessageKind Kind { get; init; }

    public required StudentId StudentId { get; init; }

    public required PlanId PlanId { get; init; }

    public Guid? SubjectId { get; init; }

    public required Instant DueAt { get; init; }

    /// <summary>Goes out whatever the hour.</summary>
    public bool AtOnce { get; init; }

    /// <summary>For the coach: which rule, on which facts.</summary>
    public required string Reason { get; init; }

    /// <summary>Part of the once-key beside kind, student and subject: a day or a stage id.</summary>
    public required string Occasion { get; init; }

    /// <summary>The same cause twice gives the same key.</summary>
    public string OnceKey => $"{Terms.Of(Kind)}|{StudentId.Value:N}|{SubjectId ?? PlanId.Value:N}|{Occasion}";
}
