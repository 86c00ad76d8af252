namespace CoachOffice.Domain.Plans;

/// <summary>Why a drill is not offered.</summary>
public enum WithheldReason
{
    Limit,
    Kit,
    Room,
    Level,
    Age,
    TriedInVain,
    OppositeFault,
    Time,
}
