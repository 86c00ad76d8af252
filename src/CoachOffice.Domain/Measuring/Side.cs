namespace CoachOffice.Domain.Measuring;

/// <summary>Which edge of the wanted range a value lies beyond.</summary>
public enum Side
{
    None,
    Low,
    High,
}
