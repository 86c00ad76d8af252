using CoachOffice.Data.Media;
using CoachOffice.Data.Moving;
using CoachOffice.Domain;

namespace CoachOffice.Data.Safekeeping;

/// <summary>Brings a backup back into an empty place, on this machine or another: every hash is compared before, every row counted after.</summary>
/// <param name="backup">The backup's folder.</param>
/// <param name="time">For the media folder.</param>
public sealed class RestoreBackup(string backup, TimeProvider time)
{
    private const string Staged = "office.db.restoring";

    /// <summary>Into the database and folder of an office that is not there yet.</summary>
    /// <returns>What was brought back, or why nothing was.</returns>
    public async Task<Outcome<BackupManifest>> Into(OfficeDatabase database, DataFolder folder, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(database);
        ArgumentNullException.ThrowIfNull(folder);
        var read = await BackupManifest.Read(backup, stop);
        if (!read.TryGet(out var manifest)) return read;
        if (EmptyPlace.Occupied(database, folder) is { } occupied) return occupied;
        using var shelf = BackupShelf.Of(backup, time);
        if (await BackupCheck.Files(backup, manifest, shelf, stop) is { } damaged) return damaged;
        var staged = folder.Inside(Staged);
        var done = false;
        try
        {
            if ((await StagedOffice.Make(backup, manifest, staged, stop) ?? await CopyMedia(manifest, shelf, folder, stop) ?? await Settle(staged, database, stop)) is { } refusal) return refusal;
            done = true;
            return manifest;
        }
        finally
        {
            Leftovers.Drop(staged);
            if (!done) EmptyPlace.EmptyMedia(folder);
        }
    }

    /// <summary>Whether it could be brought back: done into a folder aside, which is removed. Stills and clips are read whole and not copied.</summary>
    public async Task<Outcome<BackupManifest>> Prove(CancellationToken stop = default)
    {
        var read = await BackupManifest.Read(backup, stop);
        if (!read.TryGet(out var manifest)) return read;
        using var shelf = BackupShelf.Of(backup, time);
        if (await BackupCheck.Files(backup, manifest, shelf, stop) is { } damaged) return damaged;
        var aside = shelf.BeginProof(time.GetUtcNow());
        try
        {
            return await StagedOffice.Make(backup, manifest, Path.Combine(aside, SnapshotFiles.DatabaseName), stop) is { } refusal ? refusal : manifest;
        }
        finally
        {
            Directory.Delete(aside, recursive: true);
        }
    }

    private async Task<Refusal?> CopyMedia(BackupManifest manifest, BackupShelf shelf, DataFolder folder, CancellationToken stop)
    {
        using var media = new MediaFolder(folder, time);
        foreach (var medium in manifest.Media)
        {
            await using var bytes = shelf.Media.Open(medium.Name);
            using var received = bytes is null ? null : await media.Receive(bytes, long.MaxValue, stop);
            if (received?.Sha256 != medium.Sha256) return BackupCheck.Damaged($"the still or clip {medium.Name[..8]}… changed while it was read");
            media.Place(received);
        }

        return null;
    }

    private static async Task<Refusal?> Settle(string staged, OfficeDatabase database, CancellationToken stop)
    {
        if (EmptyPlace.FileOf(database) is { } file)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(file)!);
            File.Move(staged, file);
            return null;
        }

        var moved = await new MoveOffice(OfficeDatabase.InFile(staged), database).Now(null, stop);
        return moved.Succeeded ? null : moved.Refusals[0];
    }
}
