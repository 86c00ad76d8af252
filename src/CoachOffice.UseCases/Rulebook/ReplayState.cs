namespace CoachOffice.UseCases.Rulebook;

/// <summary>Where a comparison of two rulebooks over past lessons stands.</summary>
public enum ReplayState
{
    /// <summary>Looking for the lessons an edit may reach.</summary>
    Searching,

    /// <summary>Following those lessons.</summary>
    Comparing,

    /// <summary>All of them were followed.</summary>
    Done,

    /// <summary>Its owner stopped it, or began another.</summary>
    Stopped,

    /// <summary>A defect ended it; the log says which.</summary>
    Failed,
}
