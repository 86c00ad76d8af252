using CoachOffice.Data.Moving;
using CoachOffice.Data.Sqlite;
using CoachOffice.Domain;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.Safekeeping;

/// <summary>A backup's database brought back into a file of its own, counted, and made ready for this program.</summary>
internal static class StagedOffice
{
    /// <summary>Null when the file holds the practice as it was, at this program's schema.</summary>
    public static async Task<Refusal?> Make(string backup, BackupManifest manifest, string file, CancellationToken stop)
    {
        await FileHash.Copy(Path.Combine(backup, manifest.Database.Name), file, stop);
        await using (var staged = new MoveSide(OfficeDatabase.InFile(file)))
        {
            if (await Wrong(staged, manifest, stop) is { } wrong) return wrong;
            if (await staged.Prepare(stop) is { } newer) return newer;
        }

        SingleFile.Of(file);
        return null;
    }

    private static async Task<Refusal?> Wrong(MoveSide staged, BackupManifest manifest, CancellationToken stop)
    {
        if (await staged.Db.Texts("PRAGMA integrity_check", stop) is not ["ok"]) return BackupCheck.Damaged("its database is damaged inside");
        if (await staged.Migration(stop) != manifest.Migration) return BackupCheck.Damaged("its database is not the one its list of contents tells of");

        // Rows of another version have columns this program cannot name; they are counted, and the file is the same byte for byte.
        var same = staged.Db.Database.GetMigrations().Last() == manifest.Migration;
        return same ? await Differs(staged, manifest, stop) : await Miscounted(staged, manifest, stop);
    }

    private static async Task<Refusal?> Differs(MoveSide staged, BackupManifest manifest, CancellationToken stop)
    {
        var expected = manifest.Tables.ToDictionary(t => t.Table, StringComparer.Ordinal);
        var differs = (await staged.Db.Prints(stop)).FirstOrDefault(p => !expected.TryGetValue(p.Table, out var was) || was != p);
        return differs is null ? null : BackupCheck.Damaged($"the table {differs.Table} reads otherwise than when the backup was made");
    }

    private static async Task<Refusal?> Miscounted(MoveSide staged, BackupManifest manifest, CancellationToken stop)
    {
        foreach (var table in manifest.Tables)
        {
            var rows = (await staged.Db.Texts($"SELECT CAST(COUNT(*) AS TEXT) FROM \"{table.Table}\"", stop))[0];
            if (rows != $"{table.Rows}") return BackupCheck.Damaged($"the table {table.Table} has {rows} rows instead of {table.Rows}");
        }

        return null;
    }
}
