using CoachOffice.Domain;

namespace CoachOffice.UseCases.Students;

/// <summary>Refusals several operations share.</summary>
internal static class StudentRefusals
{
    public static Refusal NotFound { get; } = new("student-not-found", "There is no such student; the link may be old, or the student was erased.");

    public static Refusal Busy { get; } = new("changed-meanwhile", "Someone else saved this student at the same moment; look again and repeat it.");
}
