namespace CoachOffice.UseCases.Safekeeping;

/// <summary>When and where backups are made: section <c>Office:Backup</c>.</summary>
public sealed record BackupSettings
{
    /// <summary>Whether the clock makes them; false where somebody else answers for backups.</summary>
    public bool Enabled { get; init; } = true;

    /// <summary>The folder; <c>backups</c> in the data folder when empty. Another disk is better.</summary>
    public string Folder { get; init; } = "";

    /// <summary>The hour of the practice's day from which on one is due, 0 to 23.</summary>
    public int Hour { get; init; } = 3;

    /// <summary>How many are kept.</summary>
    public int Keep { get; init; } = 14;

    /// <summary>After so many days without a good one Today says so.</summary>
    public int WarnAfterDays { get; init; } = 3;
}
