namespace CoachOffice.Domain.Measuring;

/// <summary>How far a finding lies from the wanted range; the order is the order of severity.</summary>
public enum Grade
{
    NoRange,
    InRange,
    Borderline,
    Mild,
    Moderate,
    Marked,
}
