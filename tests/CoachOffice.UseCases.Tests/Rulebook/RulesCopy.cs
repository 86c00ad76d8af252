using CoachOffice.UseCases.Rulebook;

namespace CoachOffice.UseCases.Tests.Rulebook;

/// <summary>The shipped rules in a folder where a test may change them.</summary>
public sealed class RulesCopy : IDisposable
{
    public RulesCopy()
    {
        var source = ShippedRules.Find().Directory;
        foreach (var file in System.IO.Directory.GetFiles(source, "*.yaml", SearchOption.AllDirectories))
        {
            var target = Path.Combine(Directory, Path.GetRelativePath(source, file));
            System.IO.Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.Copy(file, target);
        }
    }

    public string Directory { get; } = System.IO.Directory.CreateTempSubdirectory("coachoffice-rules-").FullName;

    public void Rename(string name) => Write("rulebook.yaml", $"name: {name}\n");

    public void Write(string file, string text) => File.WriteAllText(Path.Combine(Directory, file), text);

    public void Dispose() => System.IO.Directory.Delete(Directory, recursive: true);
}
