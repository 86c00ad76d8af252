using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Reading;

/// <summary>A small sound rulebook with every key of the schema in it, to be changed by tests.</summary>
public static class SmallBook
{
    public static IReadOnlyDictionary<string, string> Files { get; } = new SortedDictionary<string, string>(StringComparer.Ordinal)
    {
        ["cases.yaml"] = SmallBookText.Cases,
        ["drills.yaml"] = SmallBookText.Drills,
        ["measures.yaml"] = SmallBookText.Measures,
        ["order.yaml"] = SmallBookText.Order,
        ["patterns.yaml"] = SmallBookText.Patterns,
        ["ranges.yaml"] = SmallBookText.Ranges,
    };

    public static Rulebook Book { get; } = RulebookReader.Read(RulebookText.Of(Files)).Value;

    /// <summary>The files with one text in one file replaced; the text must be there exactly once.</summary>
    public static RulebookText With(string file, string old, string replacement)
    {
        Assert.Equal(2, Files[file].Split(old).Length);
        return WithFile(file, Files[file].Replace(old, replacement, StringComparison.Ordinal));
    }

    /// <summary>The files with one file's content replaced.</summary>
    public static RulebookText WithFile(string file, string content) =>
        RulebookText.Of(Files.Where(f => f.Key != file).Append(KeyValuePair.Create(file, content)));
}
