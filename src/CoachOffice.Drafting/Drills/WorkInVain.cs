using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Drills;

/// <summary>Faults still out although drills for them were tried long enough. From two on, the plan looks again instead of asking for more.</summary>
internal static class WorkInVain
{
    private const int LookAgainFrom = 2;

    /// <summary>The findings, by row; none when fewer than two pieces of work, each with a ladder of its own, were in vain.</summary>
    public static IReadOnlyList<Finding> Of(LessonAtHand at)
    {
        var tried = at.Facts.Tried.Where(Withholding.IsInVain).Select(t => at.Book.Find(t.Drill)).OfType<Drill>().ToList();
        var vain = at.Lesson.AllOut.Where(f => tried.Any(d => d.Trains.Contains(f.Fault!.Value))).ToList();
        var ladders = vain.Select(f => at.Book.For(f.Fault!.Value)?.Id).Distinct().Count();
        return Math.Min(tried.Count, ladders) >= LookAgainFrom ? vain : [];
    }
}
