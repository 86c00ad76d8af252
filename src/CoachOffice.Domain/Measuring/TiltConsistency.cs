namespace CoachOffice.Domain.Measuring;

/// <summary>
/// Do the tilts and shifts of one lesson fit together? The tilt at impact is about the tilt at address plus 1.1 degrees for each centimetre
/// by which the pelvis moved more toward the target than the head (own geometry, an adult of 175 cm).
/// </summary>
public static class TiltConsistency
{
    private const double DegreesPerCentimetre = 1.1;
    private const double MostDisagreementDegrees = 10;

    /// <summary>The measures the check compares.</summary>
    public static IReadOnlyList<MeasureId> Compared { get; } =
        [NamedMeasures.AddressSpineTilt, NamedMeasures.ImpactSpineTilt, NamedMeasures.DownswingPelvisShift, NamedMeasures.HeadDrift];

    /// <summary>The tilt at impact the other readings lead one to expect, in degrees; null when one of them is missing.</summary>
    public static Quantity? ExpectedAtImpact(IReadOnlyList<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(findings);
        if (ValueOf(findings, NamedMeasures.AddressSpineTilt) is not { } address) return null;
        if (ValueOf(findings, NamedMeasures.DownswingPelvisShift) is not { } pelvis) return null;
        if (ValueOf(findings, NamedMeasures.HeadDrift) is not { } head) return null;
        return new Quantity(Math.Round(address + (DegreesPerCentimetre * (pelvis - head)), 9), Unit.Degree);
    }

    /// <summary>True when the tilt read at impact lies more than 10 degrees from what the others lead one to expect: one of them was read differently.</summary>
    public static bool Disagrees(IReadOnlyList<Finding> findings) =>
        ExpectedAtImpact(findings) is { } expected
        && ValueOf(findings, NamedMeasures.ImpactSpineTilt) is { } read
        && Math.Round(Math.Abs(expected.Value - read), 9) > MostDisagreementDegrees;

    private static double? ValueOf(IReadOnlyList<Finding> findings, MeasureId measure) => findings.FirstOrDefault(f => f.Measure.Id == measure)?.Value.Value;
}
