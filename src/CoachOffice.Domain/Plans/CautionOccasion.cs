namespace CoachOffice.Domain.Plans;

/// <summary>When a caution is shown.</summary>
public enum CautionOccasion
{
    Always,
    SwingingClub,
    HittingBalls,
    Indoors,
    Outdoors,
    FullSpeed,
    Minor,
    UnderThirteen,
    LimitCurrent,
    LimitPast,
    LimitCleared,
    Drill,
    DeviceDoubtful,
    InstrumentMismatch,
    ReadingsDisagree,
    HeightNeeded,
    SlowVideo,
    OnTheCourse,
    StagesLeftOutRoom,
    StagesLeftOut,
    NoDrillTime,
    NoDrillInVain,
    NoDrillOpposite,
    NoDrillPlace,
    NoDrillLimit,
}
