namespace CoachOffice.Domain.Measuring;

/// <summary>What a re-test shows of a change, beyond reading error.</summary>
public enum Movement
{
    /// <summary>Toward or further into the wanted range.</summary>
    MovedToward,

    /// <summary>Further out, or out of the range.</summary>
    MovedAway,

    /// <summary>Past the far edge.</summary>
    MovedThrough,

    /// <summary>A change large enough to matter would have been seen, and was not.</summary>
    NoChangeBeyondReadingError,

    /// <summary>Too few readings to see a change large enough to matter.</summary>
    CannotTell,
}
