using System.Text.Json;
using CoachOffice.Data.Moving;
using CoachOffice.Domain;

namespace CoachOffice.Data.Safekeeping;

/// <summary>What a backup holds, written last: a folder without one is no backup.</summary>
public sealed record BackupManifest
{
    /// <summary>The form this program writes and reads.</summary>
    public const int Known = 1;

    internal const string FileName = "manifest.json";

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web) { WriteIndented = true };

    /// <summary>The form of the backup.</summary>
    public int Format { get; init; } = Known;

    /// <summary>When it was begun, UTC.</summary>
    public required DateTimeOffset MadeAt { get; init; }

    /// <summary>Which database the practice was kept in.</summary>
    public required string Provider { get; init; }

    /// <summary>The last migration of the database in it.</summary>
    public required string Migration { get; init; }

    /// <summary>What every table holds.</summary>
    public required IReadOnlyList<TablePrint> Tables { get; init; }

    /// <summary>The database as one SQLite file, whatever kept the practice.</summary>
    public required BackupFile Database { get; init; }

    /// <summary>The same moment as the database server's own program writes it, where that was at hand.</summary>
    public BackupFile? Dump { get; init; }

    /// <summary>The settings of the office as they were, for whoever sets up a new machine.</summary>
    public BackupFile? Settings { get; init; }

    /// <summary>Every still and clip.</summary>
    public required IReadOnlyList<BackupFile> Media { get; init; }

    /// <summary>Stills and clips the database names and that did not lie in the office either.</summary>
    public IReadOnlyList<string> Absent { get; init; } = [];

    /// <summary>All rows.</summary>
    public long Rows => Tables.Sum(t => t.Rows);

    /// <summary>All bytes.</summary>
    public long Bytes => Database.Bytes + (Dump?.Bytes ?? 0) + Media.Sum(m => m.Bytes);

    /// <summary>Files in the backup's own folder.</summary>
    internal IEnumerable<BackupFile> Own => new[] { Database, Dump, Settings }.OfType<BackupFile>();

    internal async Task Write(string folder, CancellationToken stop)
    {
        await using var file = new FileStream(Path.Combine(folder, FileName), FileMode.CreateNew, FileAccess.Write);
        await JsonSerializer.SerializeAsync(file, this, Json, stop);
        file.Flush(flushToDisk: true);
    }

    /// <summary>The manifest of a backup's folder, or why it is none this program can read.</summary>
    public static async Task<Outcome<BackupManifest>> Read(string folder, CancellationToken stop = default)
    {
        var path = Path.Combine(folder, FileName);
        if (!File.Exists(path)) return new Refusal("backup-not-found", $"There is no backup in {folder}: {FileName} is missing.");
        try
        {
            await using var file = File.OpenRead(path);
            var read = await JsonSerializer.DeserializeAsync<BackupManifest>(file, Json, stop);
            return read is { Format: Known } ? read : new Refusal("backup-other-form", $"This backup has form {read?.Format}, and this program reads form {Known}. Use the program that made it, or a newer one.");
        }
        catch (JsonException)
        {
            return new Refusal("backup-damaged", $"{FileName} of the backup cannot be read, so nothing in it can be trusted.");
        }
    }
}
