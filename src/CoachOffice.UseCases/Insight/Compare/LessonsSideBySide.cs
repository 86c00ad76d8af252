namespace CoachOffice.UseCases.Insight.Compare;

/// <summary>Two lessons of one student.</summary>
public sealed record LessonsSideBySide
{
    public required string StudentName { get; init; }

    /// <summary>All that can be picked, newest first.</summary>
    public required IReadOnlyList<OfferedLesson> Offered { get; init; }

    /// <summary>The one on the left; null when there are not two.</summary>
    public OfferedLesson? Earlier { get; init; }

    /// <summary>The one on the right.</summary>
    public OfferedLesson? Later { get; init; }

    /// <summary>Every measure read in either, by view, then the book's order.</summary>
    public IReadOnlyList<ComparedMeasure> Rows { get; init; } = [];
}
