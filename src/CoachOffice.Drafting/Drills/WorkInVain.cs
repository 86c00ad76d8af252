using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Drills;

/// <summary>Faults still out although drills for them were tried long enough. From two on, the plan looks again instead of asking for more.</summary>
internal static class WorkInVain
{
    private const int LookAgainFrom = 2;

    /// <summary>The findings, by row; none when fewer than two.</summary>
    public static IReadOnlyList<Finding> Of(LessonAtHand at)
    {
        var tried = at.Facts.Tried.Where(Withholding.IsInVain).Select(t => at.Book.Find(t.Drill)).OfType<Domain.Plans.Drill>().SelectMany(d => d.Trains).ToHashSet();
        var vain = at.Lesson.AllOut.Where(f => tried.Contains(f.Fault!.Value)).ToList();
        return vain.Count >= LookAgainFrom ? vain : [];
    }
}
