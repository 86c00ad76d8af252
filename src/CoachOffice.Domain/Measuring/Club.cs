namespace CoachOffice.Domain.Measuring;

/// <summary>Club groups with ranges of their own; full swings only.</summary>
public enum Club
{
    Driver,
    Fairway,
    Hybrid,
    Iron,
    Wedge,
}
