namespace CoachOffice.Domain.Students;

/// <summary>Parts of the body a drill loads and a student may have a limit in.</summary>
public enum Region
{
    LowerBack,
    UpperBack,
    Neck,
    Ribs,
    LeadShoulder,
    TrailShoulder,
    LeadElbow,
    TrailElbow,
    LeadWrist,
    TrailWrist,
    LeadHand,
    TrailHand,
    LeadHip,
    TrailHip,
    LeadKnee,
    TrailKnee,
    Ankle,
    Foot,
    Other,
}
