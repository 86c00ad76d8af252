using CoachOffice.Domain.Measuring;
using CoachOffice.UseCases.Lessons;

namespace CoachOffice.UseCases.Measuring;

/// <summary>A verdict as one sentence for coach and student: it describes the reading, never the person.</summary>
public static class VerdictText
{
    /// <summary>The verdict with its numbers and words.</summary>
    public static KeptVerdict Keep(Baseline baseline, MeasuredValue after, Verdict verdict, bool inVain)
    {
        ArgumentNullException.ThrowIfNull(baseline);
        ArgumentNullException.ThrowIfNull(after);
        ArgumentNullException.ThrowIfNull(verdict);
        return new KeptVerdict
        {
            Movement = verdict.Movement,
            Standing = verdict.Standing,
            Before = baseline.Before.Value.In(baseline.Measure.Unit).Value,
            BeforeReadings = baseline.Before.Readings,
            After = after.Value.In(baseline.Measure.Unit).Value,
            AfterReadings = after.Readings,
            SmallestRealChange = verdict.SmallestRealChange.Value,
            MoreReadings = verdict.MoreReadings,
            Sentence = $"{Numbers(baseline, after)}: {Moved(verdict)}, {Stands(verdict)}.{Advice(verdict, inVain)}",
        };
    }

    private static string Numbers(Baseline baseline, MeasuredValue after)
    {
        var unit = baseline.Measure.Unit;
        return $"{baseline.Measure.Name} was {Value(baseline.Before, unit)} and is {Value(after, unit)}";
    }

    private static string Value(MeasuredValue value, Unit unit) =>
        $"{ShownUnits.Said(value.Value.In(unit))} ({value.Readings} {(value.Readings == 1 ? "reading" : "readings")})";

    private static string Moved(Verdict verdict)
    {
        var error = ShownUnits.Said(verdict.SmallestRealChange);
        return verdict.Movement switch
        {
            Movement.MovedToward => $"moved toward the wanted range by more than reading error ({error})",
            Movement.MovedAway => $"moved away from the wanted range by more than reading error ({error})",
            Movement.MovedThrough => $"moved through the wanted range and out on the far side (reading error {error})",
            Movement.NoChangeBeyondReadingError => $"no change beyond reading error ({error})",
            _ => $"cannot tell, because reading error ({error}) is larger than the way to the edge",
        };
    }

    private static string Stands(Verdict verdict) => verdict.Standing == Standing.InRange ? "in range now" : "not yet in range";

    private static string Advice(Verdict verdict, bool inVain)
    {
        if (verdict.Movement == Movement.CannotTell)
        {
            return verdict.MoreReadings is { } more
                ? $" {more} more {(more == 1 ? "reading" : "readings")} from different swings would settle it."
                : " More swings would not settle it; the camera's place and the marking set the limit.";
        }

        return inVain ? " The drills had their time, so the next draft leaves them out." : "";
    }
}
