using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;
using CoachOffice.UseCases.Measuring;

namespace CoachOffice.Web.Features.Measuring;

/// <summary>What a verdict leads to, in a sentence.</summary>
internal static class NextSteps
{
    public static string After(RetestView view, KeptVerdict verdict)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(verdict);
        if (view.PlanStatus is not (PlanStatus.Active or PlanStatus.OnHold)) return "The plan has ended; the verdict stays in its history.";
        if (verdict.Movement == Movement.CannotTell) return "Nothing is decided. The stage goes on; read more swings when you look again.";
        if (Opens(view.Gate, verdict)) return "The gate is open: the next stage begins, and a second look in one to two weeks will say whether it lasts.";
        return verdict.Movement switch
        {
            Movement.MovedToward => "On its way. The stage goes on with the same drills, and we look again at its end.",
            Movement.MovedAway => "It went the other way. Talk it over before more of the same; the next draft counts this look.",
            Movement.MovedThrough => "It went past the far edge. Ease off this drill; the next draft looks at the other side.",
            _ => "The stage goes on. If enough was practised and the look had enough swings, the next draft counts the drill as tried without a change.",
        };
    }

    private static bool Opens(PlanGate gate, KeptVerdict verdict) =>
        gate.Kind == GateKind.Measure && new Limits(gate.AtLeast, gate.AtMost).Contains(verdict.After) && verdict.AfterReadings >= gate.Readings;
}
