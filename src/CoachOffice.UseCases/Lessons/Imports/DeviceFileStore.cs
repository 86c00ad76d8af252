using System.Security.Cryptography;
using CoachOffice.Data;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Where open files of devices lie: in the data folder, outside everything that is served, named by their id alone.</summary>
public sealed class DeviceFileStore(DataFolder folder)
{
    /// <summary>The largest file that is taken.</summary>
    public const int MostBytes = 10 * 1024 * 1024;

    /// <summary>The file's place.</summary>
    public string PathOf(Guid id) => Path.Combine(folder.Inside("device-files"), $"{id:N}.csv");

    /// <summary>Keeps the content and gives its hash; null when it is larger than <see cref="MostBytes"/>, and then nothing is kept.</summary>
    public async Task<string?> Keep(Guid id, Stream content, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(content);
        DataFolder.At(folder.Inside("device-files"));
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        long length = 0;
        await using (var file = File.Create(PathOf(id)))
        {
            var piece = new byte[1 << 16];
            for (var read = await content.ReadAsync(piece, stop); read > 0 && length <= MostBytes; read = await content.ReadAsync(piece, stop))
            {
                length += read;
                hash.AppendData(piece, 0, read);
                await file.WriteAsync(piece.AsMemory(0, read), stop);
            }
        }

        if (length <= MostBytes) return Convert.ToHexStringLower(hash.GetHashAndReset());
        Remove(id);
        return null;
    }

    /// <summary>Removes it; a missing one is no fault.</summary>
    public void Remove(Guid id)
    {
        if (File.Exists(PathOf(id))) File.Delete(PathOf(id));
    }

    /// <summary>True for a text that was written before; one that is just being brought has no row yet.</summary>
    internal bool IsOlder(Guid id, Instant since) => Instant.FromDateTimeUtc(File.GetLastWriteTimeUtc(PathOf(id))) < since;

    /// <summary>The ids of all that lie there.</summary>
    public IReadOnlyList<Guid> All() => !Directory.Exists(folder.Inside("device-files")) ? []
        : [.. Directory.EnumerateFiles(folder.Inside("device-files"), "*.csv").Select(Path.GetFileNameWithoutExtension).Where(n => Guid.TryParse(n, out _)).Select(n => Guid.Parse(n!))];
}
