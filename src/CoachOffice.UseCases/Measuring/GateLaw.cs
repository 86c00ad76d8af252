using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Plans;

namespace CoachOffice.UseCases.Measuring;

/// <summary>Whether a re-test opens a rung's gate.</summary>
public static class GateLaw
{
    /// <summary>
    /// A measure gate asks for its number from enough swings, and never opens past the far edge. A gate that counts also opens when the number itself
    /// really moved into range: that is more than a count. A coach's gate opens by the coach alone.
    /// </summary>
    public static bool Opens(PlanGate gate, KeptVerdict verdict, Limits range)
    {
        ArgumentNullException.ThrowIfNull(gate);
        ArgumentNullException.ThrowIfNull(verdict);
        ArgumentNullException.ThrowIfNull(range);
        return gate.Kind switch
        {
            GateKind.Measure => new Limits(gate.AtLeast, gate.AtMost).Contains(verdict.After) && verdict.AfterReadings >= gate.Readings && !IsPastFarEdge(gate, verdict, range),
            GateKind.Count or GateKind.Outcome => verdict is { Movement: Movement.MovedToward, Standing: Standing.InRange },
            _ => false,
        };
    }

    private static bool IsPastFarEdge(PlanGate gate, KeptVerdict verdict, Limits range) =>
        gate.AtLeast is not null ? verdict.After > range.High : verdict.After < range.Low;
}
