using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Ordering;

/// <summary>Which measures serve which goal, by the rulebook.</summary>
internal static class GoalLaws
{
    /// <summary>True when the measure serves the goal with the lesson's club.</summary>
    public static bool Serves(LessonAtHand at, MeasureId measure, Goal goal)
    {
        foreach (var law in at.Book.Goals)
            if (law.Goal == goal && (law.Measures.Contains(measure) || (at.Facts.Club == Club.Driver && law.DriverOnly.Contains(measure)))) return true;
        return false;
    }
}
