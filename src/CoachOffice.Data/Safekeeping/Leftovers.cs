namespace CoachOffice.Data.Safekeeping;

/// <summary>Files that are only needed on the way.</summary>
internal static class Leftovers
{
    /// <summary>Removes an SQLite file and what lay beside it, where it still is.</summary>
    public static void Drop(string file)
    {
        foreach (var ending in (string[])["", "-wal", "-shm", "-journal", ".preparing"]) File.Delete(file + ending);
    }
}
