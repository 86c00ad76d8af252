namespace CoachOffice.Data.Safekeeping;

/// <summary>What differs by provider when a practice is copied while the office is at work.</summary>
internal interface ISnapshot
{
    /// <summary>
    /// Writes all tables as they were at one moment into an SQLite file of its own, and beside it, where the server's own program is at hand, what that makes of
    /// the same moment; gives the names of the files written.
    /// </summary>
    Task<SnapshotFiles> Take(string folder, CancellationToken stop);

    /// <summary>The right to make a backup, which one program at a time has; null while another has it. It ends with the program that holds it.</summary>
    Task<IAsyncDisposable?> Turn(CancellationToken stop);
}
