using CoachOffice.Data;
using CoachOffice.UseCases.Lessons.Imports;

namespace CoachOffice.UseCases.Students.Imports;

/// <summary>Where lists of students lie.</summary>
public sealed class StudentFileStore(DataFolder folder) : OpenFiles(folder, "student-files", MostBytes)
{
    /// <summary>The largest list that is taken.</summary>
    public const int MostBytes = 5 * 1024 * 1024;
}
