namespace CoachOffice.Domain.Students;

/// <summary>Where a student can practise.</summary>
public enum Room
{
    Home,
    Garden,
    Net,
    Range,
    Course,
}
