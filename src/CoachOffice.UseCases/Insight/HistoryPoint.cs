using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using NodaTime;

namespace CoachOffice.UseCases.Insight;

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
