namespace CoachOffice.Domain.Plans;

/// <summary>What is known of a measure. "In range" means measured and in range; nothing measured is never in range.</summary>
public enum MeasureState
{
    InRange,
    NotInRange,
    Measured,
    NotMeasured,
}
