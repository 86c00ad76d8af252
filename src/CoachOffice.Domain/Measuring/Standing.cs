namespace CoachOffice.Domain.Measuring;

/// <summary>Where the re-tested value stands, apart from whether it moved.</summary>
public enum Standing
{
    InRange,
    NotYet,
}
