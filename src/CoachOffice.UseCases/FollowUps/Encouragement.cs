using NodaTime;

namespace CoachOffice.UseCases.FollowUps;

/// <summary>How often a student is encouraged: rarely, less when unanswered, never twice on one day over all encouraging kinds together (own judgement; frequency and wearing-off of prompts are debated in the literature).</summary>
public static class Encouragement
{
    /// <summary>At most this many in any seven days.</summary>
    public const int MostInAWeek = 2;

    /// <summary>After this many without a check-in it ends, and the coach sees the silence instead.</summary>
    public const int MostUnanswered = 2;

    private const int NextAfterDays = 7;

    /// <summary>The day of the first one, counted from the stage's start or the last check-in: when the student's own rhythm would have brought a note.</summary>
    public static LocalDate FirstAfter(LocalDate day, PracticeRhythm rhythm)
    {
        ArgumentNullException.ThrowIfNull(rhythm);
        return day.PlusDays(rhythm.QuietDays);
    }

    /// <summary>The day of the next one, counted from one that went out.</summary>
    public static LocalDate NextAfter(LocalDate sent) => sent.PlusDays(NextAfterDays);

    /// <summary>The earliest day one may go out, given the days on which others did; today when nothing stands against it.</summary>
    /// <param name="today">The practice's day.</param>
    /// <param name="encouraged">Days of earlier encouragements.</param>
    /// <param name="written">Days on which anything went out to the student.</param>
    public static LocalDate EarliestDay(LocalDate today, IReadOnlyList<LocalDate> encouraged, IReadOnlyList<LocalDate> written)
    {
        var day = today;
        while (written.Contains(day) || encouraged.Count(d => d > day.PlusDays(-7) && d <= day) >= MostInAWeek) day = day.PlusDays(1);
        return day;
    }
}
