using System.Security.Cryptography;
using CoachOffice.Data;
using CoachOffice.Domain;
using NodaTime;

namespace CoachOffice.UseCases.Lessons.Imports;

/// <summary>Where open files lie until they are imported: in a folder of the data folder, outside everything that is served, named by their id alone.</summary>
public abstract class OpenFiles(DataFolder folder, string name, int mostBytes)
{
    /// <summary>The file's place.</summary>
    public string PathOf(Guid id) => Path.Combine(folder.Inside(name), $"{id:N}.csv");

    /// <summary>True while it lies there.</summary>
    public bool Has(Guid id) => File.Exists(PathOf(id));

    /// <summary>Keeps the content and gives its hash; null when it is larger than it may be, and then nothing is kept.</summary>
    public async Task<string?> Keep(Guid id, Stream content, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(content);
        DataFolder.At(folder.Inside(name));
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        long length = 0;
        await using (var file = File.Create(PathOf(id)))
        {
            var piece = new byte[1 << 16];
            for (var read = await content.ReadAsync(piece, stop); read > 0 && length <= mostBytes; read = await content.ReadAsync(piece, stop))
            {
                length += read;
                hash.AppendData(piece, 0, read);
                await file.WriteAsync(piece.AsMemory(0, read), stop);
            }
        }

        if (length <= mostBytes) return Convert.ToHexStringLower(hash.GetHashAndReset());
        Remove(id);
        return null;
    }

    /// <summary>Removes it; a missing one is no fault.</summary>
    public void Remove(Guid id)
    {
        if (Has(id)) File.Delete(PathOf(id));
    }

    /// <summary>The ids of all that lie there.</summary>
    public IReadOnlyList<Guid> All() => !Directory.Exists(folder.Inside(name)) ? []
        : [.. Directory.EnumerateFiles(folder.Inside(name), "*.csv").Select(Path.GetFileNameWithoutExtension).Where(n => Guid.TryParse(n, out _)).Select(n => Guid.Parse(n!))];

    /// <summary>True for a text that was written before; one that is just being brought has no row yet.</summary>
    internal bool IsOlder(Guid id, Instant since) => Instant.FromDateTimeUtc(File.GetLastWriteTimeUtc(PathOf(id))) < since;

    /// <summary>A file's name as it is kept: a browser may send a whole path, and a name may hold what a line cannot.</summary>
    internal static string NameOf(string name)
    {
        var last = name.Split('/', '\\')[^1].Trim();
        return last.Length > 0 && OneLine.Fits(last) && last == Domain.Students.StudentSearch.Whole(last) ? last : "file.csv";
    }
}
