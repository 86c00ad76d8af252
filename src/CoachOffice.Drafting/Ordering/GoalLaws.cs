using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;

namespace CoachOffice.Drafting.Ordering;

/// <summary>Which measures serve which goal, by the rulebook.</summary>
internal static class GoalLaws
{
    /// <summary>True when the measure serves the goal with the lesson's club.</summary>
    public static bool Serves(LessonAtHand at, MeasureId measure, Goal goal) =>
        at.Book.Goals.Where(g => g.Goal == goal).Any(g => g.Measures.Contains(measure) || (at.Facts.Club == Club.Driver && g.DriverOnly.Contains(measure)));
}
