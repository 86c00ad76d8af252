using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Causes;

namespace CoachOffice.Drafting.Ordering;

/// <summary>
/// The law of leaving a swing alone: when path, face and strike were read and are in range, the speed is at its goal where distance is the first aim,
/// nothing is marked and the spine does not lean toward the target at the top, the ball flies well and nothing is worked on.
/// </summary>
internal static class LeaveItLaw
{
    public static bool Holds(LessonAtHand at, CauseGraph graph) =>
        InRange(at, NamedMeasures.ClubPath)
        && InRange(at, NamedMeasures.FaceToPath)
        && NamedMeasures.Strike.Any(m => InRange(at, m))
        && SpeedSuffices(at)
        && at.Lesson.AllOut.All(f => (f.Grade != Grade.Marked || graph.IsGripAlone(f)) && !KeyOfWork.IsReverseTilt(f));

    /// <summary>What would have to be read before the law can hold: without a picture of flight and strike nobody can say "leave it".</summary>
    public static IReadOnlyList<MeasureId> Unread(LessonAtHand at)
    {
        List<MeasureId> wanted = [NamedMeasures.ClubPath, NamedMeasures.FaceToPath];
        if (NamedMeasures.Strike.All(m => at.Lesson.Find(m) is null)) wanted.Add(NamedMeasures.Strike[0]);
        return [.. wanted.Where(m => at.Book.Find(m) is not null && at.Lesson.Find(m) is null)];
    }

    private static bool SpeedSuffices(LessonAtHand at) =>
        at.Facts.Student.Goals is not [Goal.Distance, ..] || InRange(at, NamedMeasures.ClubSpeed);

    private static bool InRange(LessonAtHand at, MeasureId measure) => at.Lesson.Find(measure)?.Grade == Grade.InRange;
}
