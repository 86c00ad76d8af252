using CoachOffice.Data.Media;

namespace CoachOffice.Data.Safekeeping;

/// <summary>
/// The folder in which backups lie: one folder for each, whole or not there at all, and <c>media</c>, in which each still and clip lies once however many backups
/// hold it. Whoever takes a backup elsewhere takes the whole folder.
/// </summary>
/// <param name="path">The folder.</param>
/// <param name="time">For the media folder.</param>
public sealed class BackupShelf(string path, TimeProvider time) : IDisposable
{
    private const string Prefix = "backup-";
    private const string Making = ".making-";
    private const string Proving = ".proving-";

    /// <summary>Where it is.</summary>
    public string Path { get; } = System.IO.Path.GetFullPath(path);

    internal MediaFolder Media { get; } = new(new DataFolder(System.IO.Path.GetFullPath(path)), time);

    /// <summary>The shelf a backup stands on.</summary>
    public static BackupShelf Of(string backup, TimeProvider time) => new(System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(backup).TrimEnd('/')) ?? backup, time);

    /// <summary>Whole backups, newest first.</summary>
    public IReadOnlyList<string> Backups() => Directory.Exists(Path)
        ? [.. Directory.GetDirectories(Path, Prefix + "*").Where(d => File.Exists(System.IO.Path.Combine(d, BackupManifest.FileName))).OrderDescending(StringComparer.Ordinal)]
        : [];

    /// <summary>A folder aside for a backup in the making.</summary>
    internal string Begin(DateTimeOffset at) => Made(System.IO.Path.Combine(Path, Making + Stamp(at)));

    /// <summary>A folder aside in which a backup is restored to see whether it can be.</summary>
    internal string BeginProof(DateTimeOffset at) => Made(System.IO.Path.Combine(Path, Proving + Stamp(at)));

    /// <summary>Gives a whole backup its name; it is there from one moment to the next.</summary>
    internal string Finish(string making)
    {
        var name = Prefix + System.IO.Path.GetFileName(making)[Making.Length..];
        var place = System.IO.Path.Combine(Path, name);
        for (var again = 2; Directory.Exists(place); again++) place = System.IO.Path.Combine(Path, $"{name}-{again}");
        Directory.Move(making, place);
        return place;
    }

    /// <summary>Removes what a crash left half done.</summary>
    internal void Tidy()
    {
        if (!Directory.Exists(Path)) return;
        foreach (var half in Directory.GetDirectories(Path, ".*").Where(d => System.IO.Path.GetFileName(d) is var name && (name.StartsWith(Making, StringComparison.Ordinal) || name.StartsWith(Proving, StringComparison.Ordinal))))
            Directory.Delete(half, recursive: true);
    }

    /// <summary>Keeps the newest backups and what they name; gives how many went.</summary>
    internal async Task<int> Keep(int most, CancellationToken stop)
    {
        var old = Backups().Skip(Math.Max(1, most)).ToList();
        foreach (var backup in old) Directory.Delete(backup, recursive: true);
        if (old.Count == 0) return 0;
        var needed = new HashSet<string>(StringComparer.Ordinal);
        foreach (var backup in Backups())
        {
            var manifest = await BackupManifest.Read(backup, stop);

            // What cannot be read may name anything.
            if (!manifest.Succeeded) return old.Count;
            needed.UnionWith(manifest.Value.Media.Select(m => m.Name));
        }

        Media.DropArrivalsOlderThan(TimeSpan.Zero);
        foreach (var hash in Media.OlderThan(TimeSpan.MinValue).Where(h => !needed.Contains(h))) Media.Drop(hash);
        return old.Count;
    }

    public void Dispose() => Media.Dispose();

    private static string Stamp(DateTimeOffset at) => at.UtcDateTime.ToString("yyyyMMdd'-'HHmmss");

    private static string Made(string path)
    {
        if (Directory.Exists(path)) Directory.Delete(path, recursive: true);
        return DataFolder.At(path).Path;
    }
}
