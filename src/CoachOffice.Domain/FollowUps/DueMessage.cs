using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.Domain.FollowUps;

/// <summary>A message to be written.</summary>
public sealed record DueMessage
{
    public required MessageKind Kind { get; init; }

    /// <summary>Whom it is about; null when it is about nobody's lessons or plans, such as a receipt of a household. Who reads it is another matter.</summary>
    public required StudentId? StudentId { get; init; }

    /// <summary>The plan it belongs to, or null: then its family of letters decides whether and to whom it goes.</summary>
    public PlanId? PlanId { get; init; }

    /// <summary>The re-test, booking, document or other thing it speaks of; needed where there is no plan.</summary>
    public Guid? SubjectId { get; init; }

    public required Instant DueAt { get; init; }

    /// <summary>Goes out whatever the hour.</summary>
    public bool AtOnce { get; init; }

    /// <summary>For the coach: which rule, on which facts.</summary>
    public required string Reason { get; init; }

    /// <summary>Part of the once-key beside kind, student and subject: a day or a stage id.</summary>
    public required string Occasion { get; init; }

    /// <summary>The same cause twice gives the same key.</summary>
    public string OnceKey => $"{Terms.Of(Kind)}|{StudentId?.Value.ToString("N") ?? "-"}|{Subject:N}|{Occasion}";

    private Guid Subject => SubjectId ?? PlanId?.Value ?? throw new InvalidOperationException("A message speaks of a plan or of another thing.");
}
