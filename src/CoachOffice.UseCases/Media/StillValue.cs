using CoachOffice.Domain.Measuring;
using CoachOffice.Domain.Measuring.Landmarks;

namespace CoachOffice.UseCases.Media;

/// <summary>What a still says of one measure of the rulebook.</summary>
/// <param name="Measure">As the rulebook has it.</param>
/// <param name="Reading">What the marks say.</param>
/// <param name="AgainstSwing">The swing of the earlier still it was held against, or null.</param>
public sealed record StillValue(Measure Measure, PictureReading Reading, int? AgainstSwing)
{
    private static readonly int Fine = 2;

    /// <summary>The value as a coach writes it: tenths, of a ratio hundredths. Null while something is missing.</summary>
    public Quantity? Rounded => Reading.Value is { } value ? new Quantity(Math.Round(value.Value, value.Unit == Unit.Ratio ? Fine : 1, MidpointRounding.AwayFromZero), value.Unit) : null;

    /// <summary>True when there is a value and it can be.</summary>
    public bool CanBePut => Rounded is { } value && Measure.Plausible.Contains(value.Value);
}
