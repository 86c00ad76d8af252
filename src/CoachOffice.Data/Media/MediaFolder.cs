using System.Security.Cryptography;
using CoachOffice.Domain.Media;

namespace CoachOffice.Data.Media;

/// <summary>
/// The files of stills and clips: <c>media</c> in the data folder, outside the database and of what the pages serve, each under the SHA-256 of its bytes.
/// Bytes come in two steps, so that no one ever sees half a file: <see cref="Receive"/> writes and hashes them aside, <see cref="Keep"/> moves them to their place.
/// Keeping and dropping happen under <see cref="Alone"/>, together with the rows that name the file.
/// </summary>
public sealed class MediaFolder(DataFolder folder, TimeProvider time) : IDisposable
{
    private const string Name = "media";
    private const string Arriving = ".arriving";
    private const int Chunk = 128 * 1024;

    private readonly SemaphoreSlim _alone = new(1, 1);

    /// <summary>Keeps every other keeping and dropping of this program out until disposed.</summary>
    public async Task<IDisposable> Alone(CancellationToken stop)
    {
        await _alone.WaitAsync(stop);
        return new Releaser(_alone);
    }

    /// <summary>Takes bytes in aside, with their hash; null when there are more than allowed. Whoever receives them keeps or disposes them.</summary>
    public async Task<ReceivedContent?> Receive(Stream bytes, long atMost, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var path = Path.Combine(Made(Path.Combine(Root, Arriving)), Path.GetRandomFileName());
        var received = new ReceivedContent(path);
        var whole = false;
        try
        {
            whole = await Write(bytes, received, atMost, stop);
            return whole ? received : null;
        }
        finally
        {
            if (!whole) received.Dispose();
        }
    }

    /// <summary>Moves received bytes to their place. Call it before the row that names them is committed.</summary>
    public KeptContent Keep(ReceivedContent received, MediaFormat format)
    {
        ArgumentNullException.ThrowIfNull(received);
        Place(received);
        return new KeptContent(received.Sha256, received.Bytes, format);
    }

    /// <summary>Moves received bytes to their place, whatever they are.</summary>
    internal void Place(ReceivedContent received)
    {
        var place = PlaceOf(received.Sha256);
        Made(Path.GetDirectoryName(place)!);
        File.Move(received.Path, place, overwrite: true);
    }

    /// <summary>How many bytes lie under a hash; null when there are none.</summary>
    internal long? LengthOf(string sha256) => new FileInfo(PlaceOf(sha256)) is { Exists: true } file ? file.Length : null;

    /// <summary>The bytes, for reading from any place on; null when the file is not there.</summary>
    public FileStream? Open(string sha256)
    {
        var place = PlaceOf(sha256);
        return File.Exists(place) ? new FileStream(place, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete, Chunk, FileOptions.Asynchronous) : null;
    }

    /// <summary>Removes a file no row needs any more.</summary>
    public void Drop(string sha256) => File.Delete(PlaceOf(sha256));

    /// <summary>Hashes of files that have lain here for so long.</summary>
    public IReadOnlyList<string> OlderThan(TimeSpan age) => [.. Directory.Exists(Root) ? Old(Directory.EnumerateDirectories(Root, "??").SelectMany(Directory.EnumerateFiles), age).Select(f => Path.GetFileName(f)!) : []];

    /// <summary>Removes what began to arrive so long ago that nobody sends it any more.</summary>
    public int DropArrivalsOlderThan(TimeSpan age)
    {
        var arriving = Path.Combine(Root, Arriving);
        var stale = Directory.Exists(arriving) ? Old(Directory.EnumerateFiles(arriving), age).ToList() : [];
        foreach (var file in stale) File.Delete(file);
        return stale.Count;
    }

    public void Dispose() => _alone.Dispose();

    private string Root => folder.Inside(Name);

    // Only digits of a hash ever become part of a path.
    private string PlaceOf(string sha256) =>
        sha256.Length == 64 && sha256.All(char.IsAsciiHexDigitLower) ? Path.Combine(Root, sha256[..2], sha256) : throw new ArgumentException("That is no SHA-256.", nameof(sha256));

    private IEnumerable<string> Old(IEnumerable<string> files, TimeSpan age) => files.Where(f => time.GetUtcNow().UtcDateTime - File.GetLastWriteTimeUtc(f) > age);

    private static string Made(string path) => DataFolder.At(path).Path;

    private static async Task<bool> Write(Stream bytes, ReceivedContent received, long atMost, CancellationToken stop)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        await using var file = new FileStream(received.Path, FileMode.CreateNew, FileAccess.Write, FileShare.None, Chunk, FileOptions.Asynchronous);
        if (!await Copy(bytes, file, hash, atMost, stop)) return false;

        // On the disk before its row is: a crash between the two leaves a file too much, never a row without one.
        await file.FlushAsync(stop);
        file.Flush(flushToDisk: true);
        (received.Bytes, received.Sha256) = (file.Length, Convert.ToHexStringLower(hash.GetHashAndReset()));
        return true;
    }

    private static async Task<bool> Copy(Stream from, Stream to, IncrementalHash hash, long atMost, CancellationToken stop)
    {
        var buffer = new byte[Chunk];
        long total = 0;
        for (int read; (read = await from.ReadAsync(buffer, stop)) > 0;)
        {
            if ((total += read) > atMost) return false;
            hash.AppendData(buffer, 0, read);
            await to.WriteAsync(buffer.AsMemory(0, read), stop);
        }

        return true;
    }

    private sealed class Releaser(SemaphoreSlim held) : IDisposable
    {
        public void Dispose() => held.Release();
    }
}
