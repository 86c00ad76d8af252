namespace CoachOffice.Web.Features.Students;

/// <summary>One row of the limits table, as typed; a row without a region doesn't count.</summary>
public sealed class LimitFields
{
    public string? Region { get; set; }

    public string? Status { get; set; } = "current";

    public string? NotedOn { get; set; }

    public string? Source { get; set; }
}
