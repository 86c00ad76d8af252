namespace CoachOffice.Domain.Students;

/// <summary>Things a student has at hand for drills.</summary>
public enum Kit
{
    Ball,
    Tee,
    AlignmentStick,
    Towel,
    Mirror,
    ImpactBag,
    Net,
    Mat,
    Chair,
    Wall,
    Headcover,
    FaceTape,
    FootPowderSpray,
    Metronome,
    SoftBall,
}
