using CoachOffice.Data.Media;
using CoachOffice.Data.Moving;
using CoachOffice.Domain;
using Microsoft.EntityFrameworkCore;

namespace CoachOffice.Data.Safekeeping;

/// <summary>Makes a backup while the office is at work. It is written aside and gets its name when all of it lies on the disk.</summary>
public sealed class WriteBackup
{
    private const string SettingsName = "office.json";

    private readonly OfficeDb _db;
    private readonly ISnapshot _snapshot;
    private readonly MediaFolder _media;
    private readonly DataFolder _folder;
    private readonly TimeProvider _time;

    internal WriteBackup(OfficeDb db, ISnapshot snapshot, MediaFolder media, DataFolder folder, TimeProvider time) =>
        (_db, _snapshot, _media, _folder, _time) = (db, snapshot, media, folder, time);

    /// <summary>The right to make one; null while another program of this office does.</summary>
    public Task<IAsyncDisposable?> Turn(CancellationToken stop) => _snapshot.Turn(stop);

    /// <summary>Makes one and drops those beyond <paramref name="keep"/>. Call it with the turn in hand.</summary>
    /// <returns>The backup's folder.</returns>
    public async Task<string> On(BackupShelf shelf, int keep, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        shelf.Tidy();
        var at = _time.GetUtcNow();
        var making = shelf.Begin(at);
        try
        {
            var files = await _snapshot.Take(making, stop);
            var manifest = await Describe(files, at, stop);
            manifest = await CopyMedia(manifest, files, shelf, stop);
            await manifest.Write(making, stop);
        }
        catch
        {
            Drop(making);
            throw;
        }

        var place = shelf.Finish(making);
        await shelf.Keep(keep, stop);
        return place;
    }

    private async Task<BackupManifest> Describe(SnapshotFiles files, DateTimeOffset at, CancellationToken stop)
    {
        await using var copy = new MoveSide(OfficeDatabase.InFile(files.Database));
        return new BackupManifest
        {
            MadeAt = at,
            Provider = _db.Database.IsSqlite() ? nameof(DatabaseProvider.Sqlite) : nameof(DatabaseProvider.PostgreSql),
            Migration = await copy.Migration(stop),
            Tables = await copy.Db.Prints(stop),
            Database = await FileHash.Of(files.Database, stop),
            Dump = files.Dump is { } dump ? await FileHash.Of(dump, stop) : null,
            Settings = await CopySettings(Path.GetDirectoryName(files.Database)!, stop),
            Media = [],
        };
    }

    private async Task<BackupFile?> CopySettings(string making, CancellationToken stop)
    {
        var settings = _folder.Inside(SettingsName);
        if (!File.Exists(settings)) return null;
        var copy = Path.Combine(making, SettingsName);
        await FileHash.Copy(settings, copy, stop);
        return await FileHash.Of(copy, stop);
    }

    private async Task<BackupManifest> CopyMedia(BackupManifest manifest, SnapshotFiles files, BackupShelf shelf, CancellationToken stop)
    {
        var (kept, absent) = (new List<BackupFile>(), new List<string>());
        foreach (var hash in await Named(files.Database, stop))
        {
            if (shelf.Media.LengthOf(hash) is null) await CopyMedium(hash, shelf, stop);
            if (shelf.Media.LengthOf(hash) is { } bytes) kept.Add(new BackupFile(hash, bytes, hash));
            else absent.Add(hash);
        }

        return manifest with { Media = kept, Absent = absent };
    }

    /// <summary>What lies in the office under another hash than its own is not kept.</summary>
    private async Task CopyMedium(string hash, BackupShelf shelf, CancellationToken stop)
    {
        await using var bytes = _media.Open(hash);
        if (bytes is null) return;
        using var received = await shelf.Media.Receive(bytes, long.MaxValue, stop);
        if (received?.Sha256 == hash) shelf.Media.Place(received);
    }

    /// <summary>Hashes of all stills and clips the copied database names.</summary>
    private static async Task<IReadOnlyList<string>> Named(string file, CancellationToken stop)
    {
        await using var copy = new MoveSide(OfficeDatabase.InFile(file));
        var items = await copy.Db.MediaItems.AsNoTracking().Select(m => new { m.Sha256, m.SmallSha256 }).ToListAsync(stop);
        var clips = await copy.Db.ReviewClips.AsNoTracking().Select(c => c.Sha256).ToListAsync(stop);
        return [.. items.SelectMany(m => new[] { m.Sha256, m.SmallSha256 }).Concat(clips).Where(h => h.Length > 0).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];
    }

    private static void Drop(string making)
    {
        try
        {
            Directory.Delete(making, recursive: true);
        }
        catch (IOException)
        {
            // The next one tidies up.
        }
    }
}
