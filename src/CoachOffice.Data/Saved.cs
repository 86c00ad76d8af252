namespace CoachOffice.Data;

/// <summary>What came of a save.</summary>
public enum Saved
{
    /// <summary>All of it is kept.</summary>
    Yes,

    /// <summary>Someone else saved the same row since it was read; nothing was kept.</summary>
    ChangedMeanwhile,

    /// <summary>A row with the same unique key was there already; nothing was kept.</summary>
    WasThere,

    /// <summary>A coach, bay or student is booked at that time already; nothing was kept.</summary>
    TimeTaken,
}
