using CoachOffice.Domain.Access;
using CoachOffice.Domain.Lessons;

namespace CoachOffice.Data.Media;

/// <summary>A clip that is being sent, part by part.</summary>
/// <param name="Id">Its name while it arrives.</param>
/// <param name="By">Who sends it; nobody else may go on with it.</param>
/// <param name="Lesson">Where it goes.</param>
/// <param name="Length">Bytes in all.</param>
/// <param name="Offset">Bytes that are there.</param>
public sealed record ClipArrival(Guid Id, AccountId By, LessonId Lesson, long Length, long Offset)
{
    /// <summary>True when all of it is there.</summary>
    public bool IsWhole => Offset == Length;
}
