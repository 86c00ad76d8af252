using CoachOffice.Domain;
using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading.Entries;

namespace CoachOffice.Drafting.Writing;

/// <summary>Loaded regions as the files write them: what every swing loads in one word, then what is loaded more or besides.</summary>
internal static class LoadTexts
{
    public static IReadOnlyList<string> Of(IReadOnlyList<RegionLoad> loads)
    {
        var isSwing = LoadSyntax.Swing.All(region => loads.Any(load => load.Region == region));
        var rest = loads.Where(load => !isSwing || load.MoreThanSwing || !LoadSyntax.Swing.Contains(load.Region)).Select(One);
        return isSwing ? [LoadSyntax.NormalSwing, .. rest] : [.. rest];
    }

    private static string One(RegionLoad load) => load.MoreThanSwing ? $"{Terms.Of(load.Region)}^" : Terms.Of(load.Region);
}
