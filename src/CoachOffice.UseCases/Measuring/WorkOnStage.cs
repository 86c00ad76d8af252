using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using NodaTime;

namespace CoachOffice.UseCases.Measuring;

/// <summary>How much a rung was practised until its re-test.</summary>
/// <param name="Sessions">Separate days with practice.</param>
/// <param name="Days">From the rung's first day to the re-test.</param>
/// <param name="RepetitionsPercent">Mean share of the planned repetitions, as far as it was said; null when it never was.</param>
public sealed record WorkOnStage(int Sessions, int Days, double? RepetitionsPercent)
{
    // In vain: six sessions over two weeks with 60 % of the repetitions and no change (own judgement); less is not judged.
    private const int EnoughSessions = 6;
    private const int EnoughDays = 14;
    private const double EnoughPercent = 60;

    /// <summary>True when a missing change says something about the drills.</summary>
    public bool IsEnough => Sessions >= EnoughSessions && Days >= EnoughDays && RepetitionsPercent >= EnoughPercent;

    /// <summary>From practice notes between two days.</summary>
    public static WorkOnStage Of(IReadOnlyList<CheckIn> notes, LocalDate began, LocalDate until)
    {
        var sessions = notes.Where(n => n.Minutes > 0 && n.PracticedOn >= began && n.PracticedOn <= until).ToList();
        var said = sessions.Where(n => n.RepetitionsPercent is not null).ToList();
        return new WorkOnStage(
            sessions.Select(n => n.PracticedOn).Distinct().Count(),
            Period.Between(began, until, PeriodUnits.Days).Days,
            said.Count == 0 ? null : said.Average(n => n.RepetitionsPercent!.Value));
    }

    /// <summary>What came of the drills; null when that cannot be said.</summary>
    public TriedOutcome? Outcome(KeptVerdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return verdict.Movement switch
        {
            Movement.MovedToward or Movement.MovedThrough when Sessions > 0 => TriedOutcome.Improved,
            Movement.MovedAway when IsEnough => TriedOutcome.Worse,
            Movement.NoChangeBeyondReadingError when IsEnough => TriedOutcome.NoChange,
            _ => null,
        };
    }
}
