namespace CoachOffice.Domain.Students;

/// <summary>Whether a recorded limit holds today. The program never says why.</summary>
public enum LimitStatus
{
    Current,
    Past,
    Cleared,
}
