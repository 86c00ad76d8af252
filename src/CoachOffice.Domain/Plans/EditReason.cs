namespace CoachOffice.Domain.Plans;

/// <summary>Why a coach departs from a draft. Counted per rule: many departures show a rule that is wrong.</summary>
public enum EditReason
{
    AlreadyDone,
    TriedInVain,
    NotNow,
    DoubtIt,
    Risk,
    DoesNotSuitThisPerson,
    NotFeasible,
    Wording,
}
