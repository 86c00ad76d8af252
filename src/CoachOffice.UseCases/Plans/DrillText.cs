using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Plans;

/// <summary>A drill with its counts on one line.</summary>
public static class DrillText
{
    /// <summary>Name, counts, sessions and minutes.</summary>
    public static string Of(PlanDrill drill)
    {
        ArgumentNullException.ThrowIfNull(drill);
        return $"{drill.Name}: {drill.Sets} x {drill.Reps}, {Times(drill.SessionsPerWeek)} a week, about {drill.MinutesPerSession} minutes";
    }

    private static string Times(int sessions) => sessions switch { 1 => "once", 2 => "twice", _ => $"{sessions} times" };
}
