namespace CoachOffice.Domain.Students;

/// <summary>The side a student plays from.</summary>
public enum Hand
{
    Right,
    Left,
}
