namespace CoachOffice.Domain.Plans;

/// <summary>What becomes of a fault whose pattern only lacks readings.</summary>
public enum UnreadReadings
{
    /// <summary>It is provisional until they are taken.</summary>
    Wait,

    /// <summary>It is worked on as usual, and the readings are suggested beside it.</summary>
    Suggest,
}
