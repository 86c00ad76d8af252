using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Domain.Students;
using CoachOffice.Drafting.Reading.Nodes;

namespace CoachOffice.Drafting.Reading.Entries;

/// <summary>Reads the regions a drill loads: <c>lead-wrist</c>, <c>lead-wrist^</c> for more than a normal swing, <c>normal-swing</c> for what every swing loads.</summary>
internal static class LoadSyntax
{
    public const string NormalSwing = "normal-swing";

    public static IReadOnlyList<Region> Swing { get; } =
    [
        Region.LowerBack, Region.UpperBack, Region.Ribs, Region.LeadShoulder, Region.TrailShoulder,
        Region.LeadWrist, Region.TrailWrist, Region.LeadHip, Region.TrailHip, Region.LeadKnee,
    ];

    /// <summary>Each region once, in the order of the list of regions; the heavier load wins.</summary>
    public static IReadOnlyList<RegionLoad> Read(IReadOnlyList<Node> items, FaultList faults) =>
        [.. items.SelectMany(item => One(item, faults)).GroupBy(load => load.Region).OrderBy(group => group.Key)
            .Select(group => new RegionLoad(group.Key, group.Any(load => load.MoreThanSwing)))];

    private static IEnumerable<RegionLoad> One(Node node, FaultList faults)
    {
        var word = node is ScalarNode scalar ? scalar.Text : "";
        if (word == NormalSwing) return Swing.Select(region => new RegionLoad(region, MoreThanSwing: false));
        if (Terms.TryParse<Region>(word.TrimEnd('^'), out var region) && word.Count(c => c == '^') <= 1) return [new RegionLoad(region, word.EndsWith('^'))];
        faults.Add(node, $"{Words.Quote(word)} is no region of the body{Words.Right(word, [NormalSwing, .. Terms.All<Region>()])}");
        return [];
    }
}
