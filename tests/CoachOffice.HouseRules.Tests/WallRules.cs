using System.Xml.Linq;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace CoachOffice.HouseRules.Tests;

public sealed class WallRules
{
    private static readonly Dictionary<string, string[]> MayKnow = new()
    {
        ["CoachOffice.Domain"] = [],
        ["CoachOffice.Drafting"] = ["CoachOffice.Domain"],
        ["CoachOffice.Data"] = ["CoachOffice.Domain"],
        ["CoachOffice.UseCases"] = ["CoachOffice.Domain", "CoachOffice.Drafting", "CoachOffice.Data"],
        ["CoachOffice.Web"] = ["CoachOffice.UseCases", "CoachOffice.Migrations.Sqlite", "CoachOffice.Migrations.PostgreSql", "CoachOffice.SeedDemo"],
        ["CoachOffice.Cli"] = ["CoachOffice.UseCases", "CoachOffice.Migrations.Sqlite", "CoachOffice.Migrations.PostgreSql"],
        ["CoachOffice.Migrations.Sqlite"] = ["CoachOffice.Data"],
        ["CoachOffice.Migrations.PostgreSql"] = ["CoachOffice.Data"],
        ["CoachOffice.SeedDemo"] = ["CoachOffice.UseCases"],
    };

    [Fact]
    public void Projects_know_only_those_below_them() =>
        Offenders.MustBeNone(
            from path in Projects()
            let name = Path.GetFileNameWithoutExtension(path)
            where MayKnow.ContainsKey(name)
            from reference in XDocument.Load(path).Descendants("ProjectReference")
            let known = Path.GetFileNameWithoutExtension(reference.Attribute("Include")!.Value.Replace('\\', '/'))
            where !MayKnow[name].Contains(known)
            select $"{name} knows {known}",
            "The plan of the house in DEVELOPERS.md says who knows whom.");

    [Fact]
    public void Every_project_has_its_place_in_the_plan() =>
        Offenders.MustBeNone(
            Projects().Where(p => !House.Below(p).StartsWith("tests/", StringComparison.Ordinal)).Select(Path.GetFileNameWithoutExtension).Where(n => !MayKnow.ContainsKey(n!)).Select(n => n!),
            "Add it to the plan first.");

    [Fact]
    public void Only_the_data_layer_names_a_database() => Uses(f => !f.Path.StartsWith("src/CoachOffice.Data/", StringComparison.Ordinal), ["Microsoft.Data.Sqlite", "Npgsql"], "Ask the data layer.");

    [Fact]
    public void Use_cases_know_no_web() =>
        Uses(f => f.Path.StartsWith("src/CoachOffice.UseCases/", StringComparison.Ordinal), ["Microsoft.AspNetCore.Http", "Microsoft.AspNetCore.Mvc", "Microsoft.AspNetCore.Routing"], "A use case is called from pages, the command line and the clock alike.");

    [Fact]
    public void The_rule_engine_stays_in_its_room() =>
        Uses(f => !f.Path.StartsWith("src/CoachOffice.Drafting/", StringComparison.Ordinal), ["NRules", "YamlDotNet"], "Drafting is the only room with a rule engine.");

    [Fact]
    public void Versions_stand_in_one_place() =>
        Offenders.MustBeNone(
            from path in Projects()
            from package in XDocument.Load(path).Descendants("PackageReference")
            where package.Attribute("Version") is not null
            select $"{House.Below(path)}: {package.Attribute("Include")?.Value}",
            "Versions stand in Directory.Packages.props.");

    private static void Uses(Func<SourceFile, bool> room, string[] forbidden, string rule) =>
        Offenders.MustBeNone(
            from file in House.Sources.Where(room)
            from use in file.All<UsingDirectiveSyntax>()
            from name in forbidden
            let used = use.Name?.ToString() ?? ""
            where used == name || used.StartsWith(name + ".", StringComparison.Ordinal)
            select $"{file.At(use)}: {used}",
            rule);

    private static IEnumerable<string> Projects() =>
        Directory.EnumerateFiles(House.Root, "*.csproj", SearchOption.AllDirectories).Where(p => !House.Below(p).Split('/').Any(part => part is "bin" or "obj"));
}
