using System.Security.Cryptography;

namespace CoachOffice.Data.Safekeeping;

/// <summary>Reads files whole and says what they hold.</summary>
internal static class FileHash
{
    public static async Task<BackupFile> Of(string path, CancellationToken stop)
    {
        await using var file = File.OpenRead(path);
        return new BackupFile(Path.GetFileName(path), file.Length, await Of(file, stop));
    }

    public static async Task<string> Of(Stream bytes, CancellationToken stop) => Convert.ToHexStringLower(await SHA256.HashDataAsync(bytes, stop));

    /// <summary>A copy that is on the disk when this ends.</summary>
    public static async Task Copy(string from, string to, CancellationToken stop)
    {
        await using var source = File.OpenRead(from);
        await using var target = new FileStream(to, FileMode.CreateNew, FileAccess.Write);
        await source.CopyToAsync(target, stop);
        target.Flush(flushToDisk: true);
    }
}
