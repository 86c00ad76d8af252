namespace CoachOffice.Domain.Measuring;

/// <summary>Where the value stands now, apart from whether it moved.</summary>
public enum Standing
{
    InRange,
    NotYet,
}
