namespace CoachOffice.Domain.Plans;

/// <summary>The kinds of entries a rulebook is made of.</summary>
public enum EntryKind
{
    Measure,
    Range,
    Adjustment,
    Pattern,
    TrainAfter,
    Goal,
    Dosage,
    Drill,
    Progression,
    Caution,
    Case,
    Name,
}
