using NodaTime;

namespace CoachOffice.Domain.Plans;

/// <summary>Who takes a step in a plan's life, when and why.</summary>
public sealed record PlanStep(Guid Id, Instant At, string By, string Reason);
