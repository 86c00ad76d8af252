namespace CoachOffice.Domain.Plans;

/// <summary>Where a rung of a plan stands.</summary>
public enum StageStatus
{
    Waiting,
    Current,
    Done,
    Skipped,
}
