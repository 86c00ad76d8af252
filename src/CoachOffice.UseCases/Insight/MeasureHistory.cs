using CoachOffice.Domain.Measuring;

namespace CoachOffice.UseCases.Insight;

/// <summary>One measure of one student with one club over time.</summary>
public sealed record MeasureHistory
{
    public required Measure Measure { get; init; }

    public required Club Club { get; init; }

    /// <summary>As it was wanted at the last value; null when the club has none.</summary>
    public required Limits? Wanted { get; init; }

    /// <summary>In order of time, never empty.</summary>
    public required IReadOnlyList<HistoryPoint> Points { get; init; }

    /// <summary>The times in which a plan worked on it.</summary>
    public required IReadOnlyList<WorkedOn> Work { get; init; }

    /// <summary>Null below five days with a value.</summary>
    public required Trend? Trend { get; init; }
}
