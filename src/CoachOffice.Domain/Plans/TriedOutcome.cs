namespace CoachOffice.Domain.Plans;

/// <summary>What came of a drill that was tried.</summary>
public enum TriedOutcome
{
    Improved,
    NoChange,
    Worse,
}
