namespace CoachOffice.HouseRules.Tests;

/// <summary>A rule holds when nothing offends; a failure lists every offender with the rule's reason.</summary>
internal static class Offenders
{
    public static void MustBeNone(IEnumerable<string> offenders, string rule)
    {
        var all = offenders.Order(StringComparer.Ordinal).ToList();
        Assert.True(all.Count == 0, $"{rule}\n{string.Join('\n', all)}");
    }
}
