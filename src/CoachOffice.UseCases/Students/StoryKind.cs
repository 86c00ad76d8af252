namespace CoachOffice.UseCases.Students;

/// <summary>What kind of thing happened.</summary>
public enum StoryKind
{
    Lesson,
    Plan,
    CheckIn,
    Retest,
    Message,
}
