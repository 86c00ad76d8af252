namespace CoachOffice.Domain.Measuring;

/// <summary>How many more swings it takes until a number says something.</summary>
public static class ReadingsNeeded
{
    /// <summary>More swings than this in one session tire the swing more than they sharpen the number (own judgement).</summary>
    private const int MostReadings = 20;

    /// <summary>
    /// More readings until the standard error falls below half the distance to the edge.
    /// Null when no sensible number does: the setup is the limit, so the camera or the marking wants care, not more swings.
    /// </summary>
    public static int? ToSettle(Finding finding, ReadingError error)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(error);
        for (var n = finding.Readings + 1; n <= MostReadings; n++)
        {
            if (error.OfMean(n).Value < finding.OutsideBy / 2) return n - finding.Readings;
        }

        return null;
    }

    /// <summary>More readings after a change until the smallest real change fits into this distance; null when no sensible number does.</summary>
    public static int? ToJudge(MeasuredValue before, MeasuredValue after, Measure measure, Quantity distance)
    {
        ArgumentNullException.ThrowIfNull(after);
        for (var n = after.Readings + 1; n <= MostReadings; n++)
        {
            if (Verdicts.SmallestRealChange(before, after with { Readings = n }, measure).Value <= distance.Value) return n - after.Readings;
        }

        return null;
    }
}
