namespace CoachOffice.Domain.Lessons;

/// <summary>Why readings were taken.</summary>
public enum LessonKind
{
    Lesson,
    Retest,
}
