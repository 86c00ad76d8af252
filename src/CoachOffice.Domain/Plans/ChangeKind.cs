namespace CoachOffice.Domain.Plans;

/// <summary>What became of an entry from one edition of the rulebook to another.</summary>
public enum ChangeKind
{
    Added,
    Removed,
    Changed,
}
