using CoachOffice.UseCases.Lessons;
using NodaTime;

namespace CoachOffice.UseCases.Measuring;

/// <summary>The readings of a re-test as posted.</summary>
public sealed record RetestForm
{
    public required Guid RetestId { get; init; }

    /// <summary>The re-test's version the page showed.</summary>
    public required int Version { get; init; }

    /// <summary>The day the swings were made.</summary>
    public required LocalDate HeldOn { get; init; }

    /// <summary>The measure asked for, and others read along.</summary>
    public required IReadOnlyList<MeasureEntry> Entries { get; init; }

    public string Observations { get; init; } = "";
}
