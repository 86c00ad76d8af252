namespace CoachOffice.Domain.Plans;

/// <summary>The rungs of a ladder, in order: slow without a ball, half swings, full swings with a ball, club and target changing, play.</summary>
public enum Stage
{
    Rehearse,
    Half,
    Full,
    Mix,
    Play,
}
