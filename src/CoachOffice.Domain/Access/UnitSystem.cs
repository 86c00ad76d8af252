namespace CoachOffice.Domain.Access;

/// <summary>How lengths and speeds are shown.</summary>
public enum UnitSystem
{
    Metric,
    Imperial,
}
