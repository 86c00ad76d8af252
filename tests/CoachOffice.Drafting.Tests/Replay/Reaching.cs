using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Replay;

namespace CoachOffice.Drafting.Tests.Replay;

/// <summary>What a database is asked, asked of one lesson's means: a mean beyond an edge has a reading beyond it.</summary>
internal static class Reaching
{
    public static bool Holds(this Reach reach, LessonFacts lesson) =>
        reach.Whole.Count > 0 || reach.Values.Any(v => (v.Club is null || v.Club == lesson.Club) && lesson.Readings.Any(r => r.Measure == v.Measure && (v.Outside is null || r.Value.Value < v.Outside.Low || r.Value.Value > v.Outside.High)));
}
