using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using NodaTime;

namespace CoachOffice.UseCases.Plans;

/// <summary>What a coach's counts have to fit into: what a person can do, the student's week, and the rules for children.</summary>
internal static class WeekCheck
{
    private const int Child = 13;
    private const int MostMinutesForChild = 20;

    /// <summary>What is wrong with a drill's counts by themselves.</summary>
    public static IEnumerable<Refusal> Of(DrillCounts counts, Student student, LocalDate today)
    {
        if (counts.Sets is < 1 or > 20) yield return new("drill-sets", "Sets lie between 1 and 20.", nameof(counts.Sets));
        if (counts.Reps is < 1 or > 100) yield return new("drill-reps", "Repetitions in a set lie between 1 and 100.", nameof(counts.Reps));
        if (counts.SessionsPerWeek is < 1 or > 7) yield return new("drill-sessions", "Sessions a week lie between 1 and 7.", nameof(counts.SessionsPerWeek));
        if (counts.MinutesPerSession is < 1 or > 120) yield return new("drill-minutes", "Minutes a session lie between 1 and 120.", nameof(counts.MinutesPerSession));
        if (string.IsNullOrWhiteSpace(counts.Cue) || counts.Cue.Length > 300) yield return new("drill-cue", "Give one cue of up to 300 characters.", nameof(counts.Cue));
        if (counts.MinutesPerSession > MostMinutesForChild && student.BirthDate is { } born && Ages.On(born, today) < Child)
            yield return new("drill-minutes-child", "Under 13 a session lasts at most 20 minutes.", nameof(counts.MinutesPerSession));
    }

    /// <summary>A plan never asks for more minutes than the student has; a change that asks for less always passes.</summary>
    public static Refusal? Minutes(Plan plan, PlanStage stage, IReadOnlyList<PlanDrill> wanted, Student student)
    {
        var others = plan.Stages.Where(s => s.Fault != stage.Fault).GroupBy(s => s.Fault).Sum(g => Week(Now(g)));
        var (before, after) = (others + Sum(stage.Drills), others + Sum(wanted));
        return after <= student.MinutesPerWeek || after <= before ? null
            : new("too-many-minutes", $"That makes {after} minutes a week; {student.GivenName} has {student.MinutesPerWeek}. Take minutes or a session away.", nameof(DrillCounts.MinutesPerSession));
    }

    private static PlanStage? Now(IEnumerable<PlanStage> ladder)
    {
        var open = ladder.Where(s => s.Status is StageStatus.Current or StageStatus.Waiting).OrderBy(s => s.Order).ToList();
        return open.FirstOrDefault(s => s.Status == StageStatus.Current) ?? open.FirstOrDefault();
    }

    private static int Week(PlanStage? stage) => stage is null ? 0 : Sum(stage.Drills);

    private static int Sum(IReadOnlyList<PlanDrill> drills) => drills.Sum(d => d.SessionsPerWeek * d.MinutesPerSession);
}
