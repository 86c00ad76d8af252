using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CoachOffice.Domain;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading;

/// <summary>The files of a rulebook as written, by relative path with forward slashes, sorted. It can be kept whole, so that an old plan can be drafted again.</summary>
public sealed class RulebookText
{
    /// <summary>Folder of a practice's own files, which are laid over the others.</summary>
    public const string OwnFolder = "own/";

    private RulebookText(SortedDictionary<string, string> files) => Files = files;

    /// <summary>Path to content, in ordinal order of the paths.</summary>
    public IReadOnlyDictionary<string, string> Files { get; }

    /// <summary>A rulebook from files held in memory.</summary>
    public static RulebookText Of(IEnumerable<KeyValuePair<string, string>> files) =>
        new(new SortedDictionary<string, string>(files.ToDictionary(f => f.Key.Replace('\\', '/'), f => f.Value), StringComparer.Ordinal));

    /// <summary>True for the path of a practice's own file.</summary>
    public static bool IsOwn(string path) => path.StartsWith(OwnFolder, StringComparison.Ordinal);

    /// <summary>These files and others; a file of the same path is replaced.</summary>
    public RulebookText With(IEnumerable<KeyValuePair<string, string>> files)
    {
        var all = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var (path, content) in Files.Concat(files)) all[path] = content;
        return new RulebookText(all);
    }

    /// <summary>A practice's own files alone.</summary>
    public RulebookText Own() => Of(Files.Where(f => IsOwn(f.Key)));

    /// <summary>Every .yaml file below a directory. Faults: no such directory, no file, a file too big or not UTF-8.</summary>
    public static ReadResult<RulebookText> FromDirectory(string directory)
    {
        var faults = new FaultList();
        var files = new SortedDictionary<string, string>(StringComparer.Ordinal);
        if (!Directory.Exists(directory)) faults.Add(new Position(directory, 1, 1), Fault.WholeFile, "there is no such directory of rules");
        else
        {
            foreach (var path in Directory.EnumerateFiles(directory, "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
                Add(Path.GetRelativePath(directory, path).Replace('\\', '/'), new FileInfo(path), files, faults);
            if (files.Count + faults.Count == 0) faults.Add(new Position(directory, 1, 1), Fault.WholeFile, "there is no .yaml file of rules here");
        }

        return faults.Result(() => new RulebookText(files));
    }

    /// <summary>All files as one text; <see cref="Unbundle"/> gives them back.</summary>
    public string Bundle() => Encoding.UTF8.GetString(CanonicalJson.Write(new JsonObject(Files.Select(f => KeyValuePair.Create(f.Key, (JsonNode?)f.Value)))));

    /// <summary>The files of a bundle; throws <see cref="JsonException"/> for a text that is none.</summary>
    public static RulebookText Unbundle(string bundle) =>
        Of(JsonSerializer.Deserialize<Dictionary<string, string>>(bundle) ?? throw new JsonException("A bundle is an object of files."));

    private static void Add(string name, FileInfo file, SortedDictionary<string, string> files, FaultList faults)
    {
        if (file.Length > FileText.MostBytes)
        {
            FileText.TooBig(name, file.Length, faults);
            return;
        }

        if (FileText.Check(name, File.ReadAllBytes(file.FullName), faults) is { } text) files.Add(name, Encoding.UTF8.GetString(text.Span));
    }
}
