using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Measuring;
using CoachOffice.Web.Shell.Wording;

namespace CoachOffice.Web.Features.Measuring;

/// <summary>What a verdict leads to, in a sentence.</summary>
internal static class NextSteps
{
    public static string After(RetestView view, KeptVerdict verdict)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(verdict);
        return view.PlanStatus switch
        {
            PlanStatus.Completed when Opened(view, verdict) => $"That was the last gate: the plan is completed.{Look(view, " A last look on {0} says whether it stays.")}",
            PlanStatus.Active => Stage(view, verdict),
            PlanStatus.OnHold => "The plan is paused: the verdict is kept, and the stage waits until you resume it.",
            _ => "The plan has ended; the verdict stays in its history.",
        };
    }

    private static string Stage(RetestView view, KeptVerdict verdict)
    {
        if (Opened(view, verdict)) return $"The gate is open{(view.Begun is { } next ? $": {PlanWords.Of(next)} has begun" : "")}.{Look(view, " The number is read again on {0}.")}";
        if (view.StageStatus != StageStatus.Current) return $"The stage had ended before, so nothing changes by this look.{Look(view, " The number is read again on {0}.")}";
        return Moved(view, verdict) + Look(view, " The number is read again on {0}.");
    }

    private static string Moved(RetestView view, KeptVerdict verdict) => verdict.Movement switch
    {
        Movement.CannotTell => "Nothing is decided. The stage goes on; read more swings when you look again.",
        Movement.MovedToward when view.Gate.Kind == GateKind.Coach => "On its way. You alone open this gate, on the plan's page.",
        Movement.MovedToward => $"On its way. The stage goes on with the same drills until its gate opens: {view.Gate.Text}.",
        Movement.MovedAway => "It went the other way. Talk it over before more of the same; the next draft counts this look if enough was practised.",
        Movement.MovedThrough => "It went past the far edge. Ease off this drill; the next draft looks at the other side.",
        _ => "The stage goes on. If enough was practised and the look had enough swings, the next draft counts the drill as tried without a change.",
    };

    // The law that opened it, and the rung that shows it did: a plan on hold, or a stage the coach had ended, opens nothing.
    private static bool Opened(RetestView view, KeptVerdict verdict) => view.StageStatus == StageStatus.Done && GateLaw.Opens(view.Gate, verdict, view.Range);

    private static string Look(RetestView view, string sentence) =>
        view.NextLookOn is { } day ? string.Format(System.Globalization.CultureInfo.InvariantCulture, sentence, DayEntry.Said(day)) : "";
}
