namespace CoachOffice.Domain.Safekeeping;

/// <summary>What came of a backup.</summary>
public enum SafetyCopyState
{
    /// <summary>It was made, brought back aside and found the same.</summary>
    Proved,

    /// <summary>It could not be made, or could not be brought back.</summary>
    Failed,
}
