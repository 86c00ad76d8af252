namespace CoachOffice.Domain.Plans;

/// <summary>Why a fault is left for later.</summary>
public enum ParkedReason
{
    ExplainedBy,
    TrainAfter,
    LimitOfTwo,
    NoHarmShown,
    TooSmall,
    Borderline,
    NoDrill,
}
