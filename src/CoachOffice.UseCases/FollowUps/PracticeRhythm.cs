using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>How often a student usually practises, read from their own notes, or from the days agreed while there are too few.</summary>
/// <param name="QuietDays">After so many days without a note the rhythm is broken: half as long again as the usual gap (own judgement, no source).</param>
public sealed record PracticeRhythm(int QuietDays)
{
    // With fewer gaps a single holiday would make the rhythm.
    private const int FewestGaps = 3;
    private const int LastGaps = 8;
    private const int Least = 3;
    private const int Most = 14;
    private const int Week = 7;

    /// <summary>From the days practised and the days a week agreed.</summary>
    public static PracticeRhythm Of(IEnumerable<LocalDate> practised, int daysAWeek)
    {
        var days = practised.Distinct().Order().ToList();
        var gaps = days.Zip(days.Skip(1), static (one, next) => Period.DaysBetween(one, next)).TakeLast(LastGaps).Order().ToList();
        var halves = gaps.Count >= FewestGaps ? gaps[(gaps.Count - 1) / 2] + gaps[gaps.Count / 2] : 0;

        // One and a half usual gaps, rounded up: the median from its two middle ones, or a week shared among the days agreed.
        var (sum, parts) = halves > 0 ? (3 * halves, 4) : (3 * Week, 2 * Math.Max(1, daysAWeek));
        return new PracticeRhythm(Math.Clamp((sum + parts - 1) / parts, Least, Most));
    }
}
