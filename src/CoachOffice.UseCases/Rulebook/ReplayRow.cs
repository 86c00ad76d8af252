using CoachOffice.Domain.Lessons;
using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Replay;
using NodaTime;

namespace CoachOffice.UseCases.Rulebook;

/// <summary>One lesson whose draft would differ.</summary>
public sealed record ReplayRow
{
    public required LessonId Lesson { get; init; }

    public required StudentId Student { get; init; }

    public required string StudentName { get; init; }

    public required LocalDate HeldOn { get; init; }

    public required Club Club { get; init; }

    /// <summary>The work by the book in force and by the edited one, and the sections that differ.</summary>
    public required DraftDifference Difference { get; init; }
}
