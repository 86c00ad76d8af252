namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Where an import stands.</summary>
public enum ImportState
{
    /// <summary>Rows are being kept; until the end nobody sees them.</summary>
    Running,

    /// <summary>All of it is kept.</summary>
    Done,

    /// <summary>It was stopped; nothing was kept.</summary>
    Stopped,

    /// <summary>It was refused; nothing was kept.</summary>
    Refused,

    /// <summary>A defect ended it, the log says which; nothing was kept.</summary>
    Failed,
}
