using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.Domain.Lessons;

/// <summary>
/// Everything a draft of a lesson is made from, as one canonical text, so that the lesson can be drafted by another rulebook at any later day.
/// It is what the newest draft was made from; until there is one, the lesson as last saved with the student as they were then.
/// </summary>
public sealed class LessonInput
{
    private LessonInput()
    {
    }

    /// <summary>Whose input; one for each lesson with a reading.</summary>
    public LessonId LessonId { get; private set; }

    /// <summary>The lesson's student.</summary>
    public StudentId StudentId { get; private set; }

    /// <summary>The club as the text has it, to search by.</summary>
    public Club Club { get; private set; }

    /// <summary>The canonical input of a draft, in the form of the draft contract; it names the year of birth and the limits.</summary>
    public string Json { get; private set; } = "";

    /// <summary>True once a draft was made from it: saving the lesson again does not change what was drafted.</summary>
    public bool IsDrafted { get; private set; }

    /// <summary>A lesson's first.</summary>
    public static LessonInput Of(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return new LessonInput { LessonId = lesson.Id, StudentId = lesson.StudentId };
    }

    /// <summary>The lesson was saved.</summary>
    public void Save(Club club, string json)
    {
        if (!IsDrafted) (Club, Json) = (club, json);
    }

    /// <summary>A draft was made from exactly this.</summary>
    public void Draft(Club club, string json) => (Club, Json, IsDrafted) = (club, json, true);
}
