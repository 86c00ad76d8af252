using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Plans.Drafts;

namespace CoachOffice.Drafting.Drills;

/// <summary>Fits drills of one stage into a week: short sessions on separate days come before more drills (Shea et al. 2000; Lee and Genovese 1988).</summary>
internal sealed class Dosing(Dosage dosage)
{
    /// <summary>More than two drills for one fault at a time scatter attention (own judgement).</summary>
    private const int MostForOneFault = 2;

    /// <summary>Of one drill in one session; more of the same dulls attention (own judgement).</summary>
    private const int MostRepsOfOneDrill = 60;

    private const int UsualSet = 10;
    private const int SmallSet = 5;

    /// <summary>The most of these drills that fit, best first, with their counts; none when not even one fits.</summary>
    public IReadOnlyList<DraftDrill> Fit(Stage stage, IReadOnlyList<Drill> drills, Week week)
    {
        var rate = dosage.Stages.First(s => s.Stage == stage);
        var sessions = Math.Min(week.Days, dosage.SessionsAWeek);
        for (var count = Math.Min(Math.Min(week.Drills, MostForOneFault), drills.Count); count > 0; count--)
        {
            var chosen = drills.Take(count).ToList();
            var least = chosen.Sum(d => LeastMinutes(d, rate));
            var fewestSessions = count > 1 ? sessions : 1;
            for (var n = sessions; n >= fewestSessions; n--)
            {
                var session = Math.Min(week.Minutes / n, week.LongestSession);
                if (least <= session) return Doses(chosen, rate, n, session, week.Thirds);
            }
        }

        return [];
    }

    private List<DraftDrill> Doses(List<Drill> drills, StageDosage rate, int sessions, int minutes, int thirds)
    {
        var most = CeilingOfSession(rate) * thirds / Week.Parts / drills.Count;
        var spare = minutes - drills.Sum(d => LeastMinutes(d, rate));
        return [.. drills.Select(d => Dose(d, rate, sessions, LeastMinutes(d, rate) + (spare / drills.Count), most))];
    }

    private DraftDrill Dose(Drill drill, StageDosage rate, int sessions, int minutes, int most)
    {
        var ceiling = Math.Min(drill.MostReps ?? MostRepsOfOneDrill, Math.Min(MostRepsOfOneDrill, most));
        var reps = Math.Min(ceiling, (int)Math.Floor(minutes * rate.RepsPerMinute));
        var set = reps >= 2 * UsualSet ? UsualSet : reps >= SmallSet ? SmallSet : Math.Max(1, reps);
        var sets = Math.Max(1, reps / set);
        return new DraftDrill
        {
            Drill = drill.Id.Value,
            Name = drill.Name,
            Sets = sets,
            Reps = set,
            SessionsPerWeek = sessions,
            MinutesPerSession = Math.Min(minutes, Math.Max(dosage.ShortestSessionMinutes, MinutesFor(sets * set, rate))),
            Cue = drill.Cue,
        };
    }

    private int LeastMinutes(Drill drill, StageDosage rate) =>
        Math.Max(dosage.ShortestSessionMinutes, MinutesFor(Math.Min(dosage.FewestReps, drill.MostReps ?? int.MaxValue), rate));

    private int CeilingOfSession(StageDosage rate) =>
        rate.Stage >= Stage.Full ? Math.Min(rate.MostRepsPerSession, dosage.MostFullSpeedBalls) : rate.MostRepsPerSession;

    private static int MinutesFor(int reps, StageDosage rate) => (int)Math.Ceiling(Math.Round(reps / rate.RepsPerMinute, 9));
}
