using CoachOffice.Domain.Lessons;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>A lesson that takes up swings of a file.</summary>
internal sealed record FileLesson(Lesson Lesson, GroupTally Group, bool IsNew, int SwingsBefore)
{
    /// <summary>The number of the swing that was counted last.</summary>
    public int Swing => SwingsBefore + Group.Swings;
}
