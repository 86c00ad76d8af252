namespace CoachOffice.Domain.Students;

/// <summary>What a student wants; the first in their list counts most.</summary>
public enum Goal
{
    Distance,
    Consistency,
    Direction,
    Contact,
    Comfort,
}
