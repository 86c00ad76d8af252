using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using NodaTime;

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

/// <summary>The value of one lesson or re-test, in the measure's unit.</summary>
public sealed record HistoryPoint
{
    /// <summary>The record that holds the readings.</summary>
    public required LessonId Lesson { get; init; }

    public required LocalDate On { get; init; }

    public required LessonKind Kind { get; init; }

    /// <summary>The mean of its swings.</summary>
    public required double Value { get; init; }

    public required double StandardError { get; init; }

    /// <summary>How many swings it is the mean of; 1 for a derived value.</summary>
    public required int Readings { get; init; }

    /// <summary>Held against the range of that day.</summary>
    public required Grade Grade { get; init; }

    /// <summary>The side it lies beyond.</summary>
    public required Side Side { get; init; }

    /// <summary>What the re-test showed, where there is a verdict on this measure.</summary>
    public KeptVerdict? Verdict { get; init; }
}

/// <summary>A time in which a plan worked on a measure.</summary>
/// <param name="From">First day.</param>
/// <param name="Until">Last day; null while it goes on.</param>
public sealed record WorkedOn(LocalDate From, LocalDate? Until);

/// <summary>A student's measures over time, those some plan worked on first.</summary>
/// <param name="StudentName">Full name.</param>
/// <param name="Measures">By the book's order of measures.</param>
public sealed record MeasureHistories(string StudentName, IReadOnlyList<MeasureHistory> Measures);
