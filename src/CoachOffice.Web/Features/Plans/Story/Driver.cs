using CoachOffice.Domain.Measuring;

namespace CoachOffice.Web.Features.Plans.Story;

/// <summary>A cause with what it explains beneath it; a consequence that is itself a cause carries its own.</summary>
internal sealed record Driver
{
    public required FaultId Fault { get; init; }

    public required string Name { get; init; }

    public required Grade Grade { get; init; }

    /// <summary>The pattern whose root it is; null for a mere consequence.</summary>
    public string? Pattern { get; init; }

    public string? PatternName { get; init; }

    public string Because { get; init; } = "";

    /// <summary>The reasoning, for another coach.</summary>
    public string Rationale { get; init; } = "";

    public string Source { get; init; } = "";

    public IReadOnlyList<string> Facts { get; init; } = [];

    public IReadOnlyList<Driver> Explains { get; init; } = [];
}
