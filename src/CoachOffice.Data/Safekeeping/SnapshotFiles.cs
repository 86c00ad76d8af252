namespace CoachOffice.Data.Safekeeping;

/// <summary>Files of a snapshot.</summary>
/// <param name="Database">The SQLite file.</param>
/// <param name="Dump">What the server's own program wrote; null where there is none.</param>
internal sealed record SnapshotFiles(string Database, string? Dump)
{
    /// <summary>Name of the SQLite file.</summary>
    public const string DatabaseName = "office.db";

    /// <summary>Name of the server's own form.</summary>
    public const string DumpName = "office.dump";
}
