namespace CoachOffice.Domain.Measuring;

/// <summary>Whether a measured value moved, judged by the smallest real change.</summary>
public enum Movement
{
    MovedToward,
    MovedAway,
    MovedThrough,
    NoChangeBeyondReadingError,
    CannotTell,
}
