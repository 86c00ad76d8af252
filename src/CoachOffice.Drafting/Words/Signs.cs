using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Words;

/// <summary>Values of measures that go both ways, said with the word for the way and never with a bare sign: "6 deg closed", not "-6 deg".</summary>
internal static class Signs
{
    /// <summary>E.g. "14 deg away from the target"; without a word where values go one way only.</summary>
    public static string Value(Measure measure, double value) => $"{Sentences.Number(Bare(measure, value))} {measure.Unit}{Way(measure, value)}";

    /// <summary>E.g. "wanted 3 closed to 3 open", "wanted 20 to 28 away from the target", "wanted 3 or less"; null without a range.</summary>
    public static string? Wanted(Measure measure, Limits? range) => range switch
    {
        { Low: { } low, High: { } high } when Way(measure, low) == Way(measure, high) || low == 0 || high == 0 =>
            $"wanted {Sentences.Number(Bare(measure, low))} to {Sentences.Number(Bare(measure, high))}{Way(measure, low == 0 ? high : low)}",
        { Low: { } low, High: { } high } => $"wanted {Sentences.Number(Bare(measure, low))}{Way(measure, low)} to {Sentences.Number(Bare(measure, high))}{Way(measure, high)}",
        { Low: { } low } => $"wanted {Sentences.Number(low)} or more",
        { High: { } high } => $"wanted {Sentences.Number(high)} or less",
        _ => null,
    };

    /// <summary>"At least 4 deg closed" for a ceiling of -4: the bound said by its word.</summary>
    public static string Bound(Measure measure, double target, bool isFloor)
    {
        var turned = GoesBothWays(measure) && target < 0;
        return $"{(isFloor ^ turned ? "at least" : "at most")} {Value(measure, target)}";
    }

    /// <summary>The side of a fault: the word for the way when the value lies on it, "closed", else "low" or "high".</summary>
    public static string Side(Measure measure, Side side, double? value)
    {
        var lies = value is { } v && (side == Domain.Measuring.Side.Low ? v < 0 : v > 0);
        return lies && GoesBothWays(measure) ? Way(measure, value!.Value).Trim() : Domain.Terms.Of(side);
    }

    private static bool GoesBothWays(Measure measure) => measure.Negative is not null && measure.Plausible.Low < 0;

    private static double Bare(Measure measure, double value) => GoesBothWays(measure) ? Math.Abs(value) : value;

    private static string Way(Measure measure, double value)
    {
        if (!GoesBothWays(measure) || value == 0) return "";
        return " " + (value > 0 ? measure.Positive : measure.Negative!).Split(',')[0];
    }
}
