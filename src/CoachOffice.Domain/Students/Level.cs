namespace CoachOffice.Domain.Students;

/// <summary>How far along a student is.</summary>
public enum Level
{
    Beginner,
    Improver,
    Experienced,
    Elite,
}
