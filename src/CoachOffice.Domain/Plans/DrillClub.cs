namespace CoachOffice.Domain.Plans;

/// <summary>What a drill is done with.</summary>
public enum DrillClub
{
    None,
    Short,
    Full,
}
