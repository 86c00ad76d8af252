using CoachOffice.Domain.Access;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>One deed on one plan.</summary>
public sealed record PlanDeed
{
    public required PlanId Plan { get; init; }

    /// <summary>The version the page showed; null where the page showed another thing, such as a re-test.</summary>
    public int? Version { get; init; }

    public required Actor Actor { get; init; }

    /// <summary>The audit row's code, e.g. <c>plan-approved</c>.</summary>
    public required string Action { get; init; }

    /// <summary>As a refusal says it, e.g. "approve plans".</summary>
    public required string Doing { get; init; }

    /// <summary>Codes for the audit row.</summary>
    public string? Detail { get; init; }
}
