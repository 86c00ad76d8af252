using CoachOffice.Domain.Plans;

namespace CoachOffice.Drafting.Drills;

/// <summary>The time a student has for drills in a week, after the rules for the young (AAP guidance; Jayanthi et al. 2015). Warm-up is on top.</summary>
/// <param name="Minutes">Minutes a week.</param>
/// <param name="Days">Days a week.</param>
/// <param name="LongestSession">Minutes of the longest session.</param>
/// <param name="Drills">Most drills at a time.</param>
/// <param name="Thirds">How many thirds of a session's repetitions it may use; all three when alone.</param>
internal sealed record Week(int Minutes, int Days, int LongestSession, int Drills, int Thirds = Week.Parts)
{
    /// <summary>Of three parts of a shared week the first focus gets two and the second one.</summary>
    public const int Parts = 3;

    private const int Teen = 13;
    private const int GrownUp = 18;
    private const int ChildMinutesAWeek = 180;
    private const int ChildDays = 5;
    private const int ChildSession = 20;
    private const int TeenDays = 6;

    /// <summary>A second focus wants two sessions at least.</summary>
    private const int SecondSessions = 2;

    /// <summary>The student's whole week: under 13 at most the age in hours, 180 minutes, 5 days and 20 minutes a session; to 17 at most the age in hours and a day off.</summary>
    public static Week Of(LessonFacts facts, Dosage dosage)
    {
        var (given, days, age) = (facts.Student.MinutesPerWeek, Math.Max(1, facts.Student.DaysPerWeek), Math.Max(0, facts.Age));
        var minutes = age < Teen ? Math.Min(given, Math.Min(age * 60, ChildMinutesAWeek)) : age < GrownUp ? Math.Min(given, age * 60) : given;
        var drills = minutes < dosage.OneDrillBelowMinutes ? 1 : minutes < dosage.TwoDrillsBelowMinutes ? 2 : dosage.MostDrills;
        return age < Teen
            ? new Week(minutes, Math.Min(days, ChildDays), ChildSession, drills)
            : new Week(minutes, age < GrownUp ? Math.Min(days, TeenDays) : days, int.MaxValue, drills);
    }

    /// <summary>True when time is left for a second focus: two sessions of the shortest length, and room for one more drill.</summary>
    public bool HasRoomForTwo(Dosage dosage) => Drills >= 2 && Minutes / Parts >= SecondSessions * dosage.ShortestSessionMinutes;

    /// <summary>The first focus's part of a shared week.</summary>
    public Week First => this with { Minutes = Minutes - (Minutes / Parts), Drills = Drills - 1, Thirds = Parts - 1 };

    /// <summary>The second focus's part of a shared week.</summary>
    public Week Second => this with { Minutes = Minutes / Parts, Drills = 1, Thirds = 1 };
}
