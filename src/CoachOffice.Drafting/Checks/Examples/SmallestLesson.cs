using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Checks.Examples;

/// <summary>Takes readings out of a lesson as long as it still shows what it is to show.</summary>
internal static class SmallestLesson
{
    /// <summary>A lesson that shows it and from which no single reading can be taken; null when the given one does not show it at all.</summary>
    public static LessonFacts? Of(LessonFacts lesson, Func<LessonFacts, bool> shows)
    {
        if (!shows(lesson)) return null;
        var smaller = lesson;
        while (smaller.Readings.Select((_, i) => Without(smaller, i)).FirstOrDefault(shows) is { } next) smaller = next;
        return smaller;
    }

    private static LessonFacts Without(LessonFacts lesson, int index) =>
        lesson with { Readings = [.. lesson.Readings.Where((_, i) => i != index)] };
}
