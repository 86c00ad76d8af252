using CoachOffice.Domain;

namespace CoachOffice.Data.Safekeeping;

/// <summary>Reads every file of a backup whole and holds it against the manifest.</summary>
internal static class BackupCheck
{
    /// <summary>Null when every file holds what it held when the backup was made.</summary>
    public static async Task<Refusal?> Files(string backup, BackupManifest manifest, BackupShelf shelf, CancellationToken stop)
    {
        foreach (var file in manifest.Own)
        {
            var path = Path.Combine(backup, file.Name);
            if (!File.Exists(path)) return Damaged($"{file.Name} is missing");
            if (await FileHash.Of(path, stop) != file) return Damaged($"{file.Name} does not hold what it held when the backup was made");
        }

        foreach (var medium in manifest.Media)
        {
            await using var bytes = shelf.Media.Open(medium.Name);
            if (bytes is null) return Damaged($"the still or clip {medium.Name[..8]}… is missing");
            if (await FileHash.Of(bytes, stop) == medium.Sha256) continue;

            // Gone from the shelf it is copied again by the next backup.
            shelf.Media.Drop(medium.Name);
            return Damaged($"the still or clip {medium.Name[..8]}… was damaged on the disk, and is copied anew by the next backup");
        }

        return null;
    }

    public static Refusal Damaged(string what) => new("backup-damaged", $"This backup cannot be restored: {what}.");
}
