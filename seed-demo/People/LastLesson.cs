namespace CoachOffice.SeedDemo.People;

/// <summary>How far the latest lesson got.</summary>
internal enum LastLesson
{
    /// <summary>Its plan went out.</summary>
    Approved,

    /// <summary>Its draft waits for the coach.</summary>
    Drafted,

    /// <summary>Readings only.</summary>
    Recorded,

    /// <summary>The record is open and empty.</summary>
    Opened,
}
