using System.Text.RegularExpressions;

namespace CoachOffice.HouseRules.Tests;

public sealed partial class FrontDoorRules
{
    private static readonly string[] TopLevel =
    [
        "README.md", "DEVELOPERS.md", "LICENSE", "CoachOffice.sln", "Directory.Build.props", "Directory.Packages.props", "global.json",
        "src", "tests", "rules", "migrations", "seed-demo",
    ];

    [Fact]
    public void The_top_of_the_house_holds_only_what_belongs_there() =>
        Offenders.MustBeNone(
            Directory.EnumerateFileSystemEntries(House.Root).Select(e => Path.GetFileName(e)!)
                .Where(name => !name.StartsWith('.') && name is not ("data" or "TestResults" or "artifacts") && !TopLevel.Contains(name)),
            "Everything has its place below.");

    [Fact]
    public void No_machine_path_is_written_down() =>
        Offenders.MustBeNone(
            from path in Directory.EnumerateFiles(House.Root, "*", SearchOption.AllDirectories)
            let below = House.Below(path)
            where !below.Split('/').Any(p => p is "bin" or "obj" or ".git" or "data" or "TestResults" or "node_modules" or "artifacts" or "StrykerOutput")
            where Path.GetExtension(path) is ".cs" or ".md" or ".yaml" or ".json" or ".props" or ".csproj" or ".cshtml" or ".razor" or ".css" or ".js" or ""
            let text = File.ReadAllText(path)
            where MachinePath().IsMatch(text)
            select $"{below}: {MachinePath().Match(text).Value}",
            "A path of one machine means nothing on another.");

    [GeneratedRegex(@"/w(?:ork)/(?:main|shared)|/t(?:mp)/wt|/r(?:oot)/|/h(?:ome)/[a-z]+/", RegexOptions.None, 1000)]
    private static partial Regex MachinePath();
}
