using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Reading.Own;

/// <summary>What an entry that was taken away leaves behind in the others, and what marks an entry that was changed.</summary>
public sealed class RemovedEntriesTests
{
    [Fact]
    public void A_removed_caution_leaves_the_drills_that_say_it()
    {
        var named = SmallBook.Book.Drills.SelectMany(d => d.Cautions).First();
        Assert.DoesNotContain(Read($"removed: [{{ caution: {named.Value} }}]\n").Value.Book.Drills, d => d.Cautions.Contains(named));
    }

    [Fact]
    public void A_pattern_removed_is_no_longer_asked_for_where_it_stood_in_an_any()
    {
        var files = SmallBook.With("patterns.yaml", "unless: [head-shift in range, pattern head-dives]", "unless: [head-shift in range, pattern   head-dives]\n    before: [head-dives]");
        var read = RulebookReader.Load(files.With([KeyValuePair.Create("own/changes.yaml", "removed: [{ pattern: head-dives }]\n")]));
        Assert.Empty(read.Faults);
        var left = Assert.Single(read.Value.Book.Patterns);
        Assert.Equal((1, 0, 0), (left.Unless.Count, left.Before.Count, left.Over.Count));
    }

    [Fact]
    public void A_list_that_was_empty_before_stays_and_one_that_becomes_empty_goes()
    {
        var files = SmallBook.With("patterns.yaml", "explains-if-present: [impact-spine-tilt.out]", "explains-if-present: [impact-spine-tilt.out]\n    over: []");
        Assert.Empty(RulebookReader.Load(files.With([KeyValuePair.Create("own/changes.yaml", "removed: [{ pattern: setup-tilt }]\n")])).Faults);
    }

    [Fact]
    public void The_mark_of_an_entry_is_of_what_it_says_and_not_of_how_it_is_laid_out()
    {
        var (old, spread, other) = (Mark("{ id: look-around, when: drill, text: Look around you }"), Mark("\n    # a remark\n    text: 'Look around you'\n    id: look-around\n    when: drill"), Mark("{ id: look-around, when: drill, text: Look about you }"));
        Assert.Equal(12, old!.Length);
        Assert.Equal(old, spread);
        Assert.NotEqual(old, other);
        Assert.Null(Read("cautions:\n  - { id: mine, when: drill, text: Mine }\n").Value.Own.Written.Single().Was);
    }

    [Fact]
    public void A_mark_tells_numbers_words_lists_and_nothing_apart()
    {
        string[] said = ["[10, 20]", "['10', 20]", "[10, 21]", "[20, 10]", "[null, 20]", "[true, 20]", "{ range: [10, 20] }", "{ range: [10, 20], aim: [11, 12] }"];
        var marks = said.Select(driver => MarkOfRange($"driver: {driver}")).ToList();
        Assert.Equal(marks.Count, marks.Distinct(StringComparer.Ordinal).Count());
        Assert.Equal(MarkOfRange("driver: [10, 20]"), MarkOfRange("driver: [1.0e1, 20.0]"));
    }

    // Of an entry as it ships: what an own entry in its place keeps of it.
    private static string? Mark(string shipped) =>
        RulebookReader.Load(SmallBook.With("drills.yaml", "{ id: look-around, when: drill, text: Look around you }", shipped)
            .With([KeyValuePair.Create("own/changes.yaml", "cautions:\n  - { id: look-around, when: drill, text: Mine }\n")])).Value.Own.Written.Single().Was;

    private static string MarkOfRange(string driver) =>
        RulebookReader.Load(SmallBook.With("ranges.yaml", "{ measure: club-speed, driver: goal }", $"{{ measure: club-speed, {driver} }}")
            .With([KeyValuePair.Create("own/changes.yaml", "removed: [{ range: club-speed }]\n")])).Value.Own.Removed.Single().Was!;

    private static ReadResult<LoadedRulebook> Read(string own) => RulebookReader.Load(RulebookText.Of(SmallBook.Files).With([KeyValuePair.Create("own/changes.yaml", own)]));
}
