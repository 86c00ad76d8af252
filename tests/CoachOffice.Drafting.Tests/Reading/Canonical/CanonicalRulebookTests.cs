using System.Text;
using System.Text.Json;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Reading.Canonical;

namespace CoachOffice.Drafting.Tests.Reading.Canonical;

public sealed class CanonicalRulebookTests
{
    private static readonly string Hash = HashOf(RulebookText.Of(SmallBook.Files));

    [Fact]
    public void Comments_and_layout_leave_the_hash_alone()
    {
        var text = SmallBook.Files.Select(f => KeyValuePair.Create("other/" + f.Key, "# hello\n\n" + f.Value.Replace("step: 3", "step:   3.0   # three", StringComparison.Ordinal)));

        Assert.Equal(Hash, HashOf(RulebookText.Of(text)));
    }

    [Fact]
    public void One_file_for_all_leaves_the_hash_alone() =>
        Assert.Equal(Hash, HashOf(RulebookText.Of([KeyValuePair.Create("all.yaml", string.Join("\n", SmallBook.Files.Values))])));

    [Fact]
    public void The_order_of_entries_leaves_the_hash_alone()
    {
        var blocks = SmallBookText.Patterns.Split("  - id: ");
        var drills = SmallBookText.Drills.Replace("cautions:\n", "", StringComparison.Ordinal).Split("  - { id: ");
        var text = SmallBook.WithFile("patterns.yaml", $"patterns:\n  - id: {blocks[2]}\n  - id: {blocks[1]}").Files
            .Append(KeyValuePair.Create("a.yaml", $"cautions:\n  - {{ id: {drills[3]}\n  - {{ id: {drills[2]}"))
            .Select(f => KeyValuePair.Create(f.Key, f.Key == "drills.yaml" ? f.Value[..f.Value.IndexOf("cautions:\n", StringComparison.Ordinal)] : f.Value));

        Assert.Equal(Hash, HashOf(RulebookText.Of(text)));
    }

    [Fact]
    public void Worked_cases_are_no_part_of_the_hash() =>
        Assert.Equal(Hash, HashOf(RulebookText.Of(SmallBook.Files.Where(f => f.Key != "cases.yaml"))));

    [Theory]
    [InlineData("measures.yaml", "name: Head shift", "name: Head moves")]
    [InlineData("measures.yaml", "order: 10", "order: 25")]
    [InlineData("measures.yaml", "doubtful: [null, 1.51]", "doubtful: [null, 1.52]")]
    [InlineData("measures.yaml", "style-only: true", "style-only: false")]
    [InlineData("measures.yaml", "no-fault: [low]", "no-fault: [high]")]
    [InlineData("ranges.yaml", "aim: [20, 25]", "aim: [20, 26]")]
    [InlineData("ranges.yaml", "driver: goal", "driver: [40, null]")]
    [InlineData("ranges.yaml", "Someone 2001", "common practice")]
    [InlineData("ranges.yaml", "from-age: 60", "from-age: 61")]
    [InlineData("patterns.yaml", "at least moderate", "at least marked")]
    [InlineData("patterns.yaml", "impact-spine-tilt below 5", "impact-spine-tilt above 5")]
    [InlineData("patterns.yaml", "head-shift in range", "head-shift not in range")]
    [InlineData("patterns.yaml", "{ same-side: [head-shift, impact-spine-tilt] }", "{ any: [head-shift.out, club-speed.out] }")]
    [InlineData("patterns.yaml", "at least 1 others", "at least 2 others")]
    [InlineData("patterns.yaml", "explains-if-present: [impact-spine-tilt.out]", "explains: [impact-spine-tilt.out]")]
    [InlineData("patterns.yaml", "over: [head-dives]", "over: []")]
    [InlineData("drills.yaml", "lower-back^", "lower-back")]
    [InlineData("drills.yaml", "cue: brush the grass", "cue: brush the turf")]
    [InlineData("drills.yaml", "hits: 8, of: 10", "hits: 7, of: 10")]
    [InlineData("drills.yaml", "steps: [Stand, Lean]", "steps: [Lean, Stand]")]
    [InlineData("order.yaml", "days: [7, 14]", "days: [7, 15]")]
    [InlineData("order.yaml", "driver-only: [impact-spine-tilt]", "driver-only: []")]
    [InlineData("order.yaml", "because: The start comes first", "because: The start goes first")]
    public void Any_change_of_meaning_changes_the_hash(string file, string old, string replacement)
    {
        var text = old.StartsWith("explains-if", StringComparison.Ordinal)
            ? SmallBook.WithFile(file, SmallBookText.Patterns.Replace("    explains: []\n", "", StringComparison.Ordinal).Replace(old, replacement, StringComparison.Ordinal))
            : SmallBook.With(file, old, replacement);

        Assert.NotEqual(Hash, HashOf(text));
    }

    [Fact]
    public void The_written_form_is_JSON_with_sorted_names()
    {
        using var json = JsonDocument.Parse(CanonicalRulebook.Write(SmallBook.Book));

        var names = json.RootElement.EnumerateObject().Select(p => p.Name).ToList();
        Assert.Equal(names.Order(StringComparer.Ordinal), names);
        Assert.Contains("\"kind\":\"OthersInRangeCondition\"", Encoding.UTF8.GetString(CanonicalRulebook.Write(SmallBook.Book)), StringComparison.Ordinal);
    }

    private static string HashOf(RulebookText text) => RulebookReader.Load(text).Value.Sha256;
}
