namespace CoachOffice.Domain.Measuring;

/// <summary>Moments of the swing in their order, in plain words; their ordinal is for sorting only and never shown.</summary>
public enum Moment
{
    Address,
    Takeaway,
    Top,
    EarlyDownswing,
    LeadArmParallel,
    ShaftParallel,
    Impact,
    Finish,
}
