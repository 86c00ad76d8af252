using CoachOffice.Domain.Plans;
using CoachOffice.Drafting.Reading;
using CoachOffice.Drafting.Writing;

namespace CoachOffice.Drafting.Tests.Reading.Own;

public sealed class OwnChangesTests
{
    private static readonly LoadedRulebook Shipped = RulebookReader.Load(RulebookText.Of(SmallBook.Files)).Value;

    [Fact]
    public void An_own_entry_hides_the_shipped_one_of_its_kind_and_id_and_leaves_the_rest()
    {
        var loaded = Sound("cautions:\n  - { id: look-around, when: drill, text: Mind the dog }\n");

        Assert.Equal("Mind the dog", loaded.Book.Cautions.Single(c => c.Id.Value == "look-around").Text);
        Assert.Equal(Shipped.Book.Cautions.Count, loaded.Book.Cautions.Count);
        Assert.Equal("caution look-around", loaded.Own.Written.Single().Id.ToString());
        Assert.NotNull(loaded.Own.Written.Single().Was);
    }

    [Fact]
    public void The_hash_knows_no_split_between_shipped_and_own()
    {
        var (kept, moved) = (SmallBook.Files.Where(f => f.Key != "drills.yaml"), SmallBook.Files["drills.yaml"]);

        var loaded = RulebookReader.Load(RulebookText.Of(kept.Append(KeyValuePair.Create("own/changes.yaml", moved)))).Value;

        Assert.Equal(Shipped.Sha256, loaded.Sha256);
        Assert.All(loaded.Own.Written, e => Assert.Null(e.Was));
    }

    [Fact]
    public void What_a_book_has_once_is_hidden_whole() => Assert.Equal("Our book", Sound("name: Our book\n").Book.Name);

    [Fact]
    public void A_removed_pattern_goes_with_its_cases_and_leaves_its_neighbours()
    {
        var loaded = Sound("removed:\n  - pattern: head-dives\n");

        Assert.Equal(["setup-tilt"], loaded.Book.Patterns.Select(p => p.Id.Value));
        Assert.Empty(loaded.Book.Patterns[0].Over);
        Assert.DoesNotContain(loaded.Book.Patterns[0].Unless, c => c is FiredCondition);
        Assert.DoesNotContain(loaded.Cases, c => c.Pattern.Value == "head-dives");
    }

    [Fact]
    public void A_removed_drill_leaves_the_ladders_and_a_rung_that_must_be_there_is_told()
    {
        Assert.DoesNotContain(Sound("removed: [{ drill: any-three }]\n").Book.Progressions.SelectMany(p => p.Rungs), r => r.Drills.Any(d => d.Value == "any-three"));

        var faults = Faults("removed: [{ drill: half-lean }]\n");

        Assert.Contains(faults, f => f.EndsWith("is the root of a pattern, so there is a half drill here", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("removed: [{ drill: half-leen }]\n", "own/changes.yaml:1:11: removed[0]: drill half-leen is not in the shipped rulebook, so there is nothing to remove; take this line out; nearest: half-lean")]
    [InlineData("removed: [{ drill: any-three }, { drill: any-three }]\n", "own/changes.yaml:1:33: removed[1]: drill any-three stands here already; leave it out")]
    [InlineData("removed: [{ drill: any-three, pattern: head-dives }]\n", "own/changes.yaml:1:11: removed[0]: name one entry by its kind and id, e.g. { drill: head-against-shade }")]
    [InlineData("removed: [{ dril: any-three }]\n", "own/changes.yaml:1:13: removed[0].dril: 'dril' is not a name known here; nearest: drill")]
    [InlineData("removed: { drill: any-three }\n", "own/changes.yaml:1:10: removed: a list of what is removed is expected, not a mapping")]
    [InlineData("replaced: [{ drill: any-three }]\n", "own/changes.yaml:1:12: replaced[0]: no entry of your own stands for drill any-three; write it or take this line out")]
    [InlineData("removed: [{ measure: head-shift }]\n", "there is no measure 'head-shift' any more: your own rules remove it")]
    [InlineData("cautions:\n  - { id: look-around, when: drill, text: Mind }\nremoved: [{ caution: look-around }]\n", "own/changes.yaml:3:11: removed[0]: caution look-around is removed here and written in own/changes.yaml:2; keep one of the two")]
    [InlineData("cautions:\n  - { id: old-one, when: drill, text: Mind }\nreplaced: [{ caution: old-one, was: abc }]\n", "own/changes.yaml:2:5: cautions[0]: caution old-one was removed from the shipped rulebook; keep it as an entry of your own (take it out of 'replaced') or drop the change")]
    [InlineData("cautions:\n  - { id: same, when: drill, text: Mind }\n  - { id: same, when: drill, text: Mind }\n", "own/changes.yaml:3:11: cautions[1].id: the id 'same' is taken in own/changes.yaml:2; give this one another")]
    [InlineData("colours: []\n", "own/changes.yaml:1:1: colours: 'colours' is no part of a rulebook")]
    public void A_change_that_does_not_fit_is_told_at_its_place(string own, string expected) =>
        Assert.Contains(Faults(own), fault => fault.StartsWith(expected, StringComparison.Ordinal) || fault.EndsWith(expected, StringComparison.Ordinal));

    [Fact]
    public void Removed_and_replaced_are_no_part_of_a_shipped_file() =>
        Assert.Contains(RulebookReader.Load(SmallBook.WithFile("more.yaml", "removed: []\n")).Faults, f => f.Message.StartsWith("'removed' is no part of a rulebook", StringComparison.Ordinal));

    [Fact]
    public void A_shipped_entry_that_changed_since_is_said_without_keeping_the_book_from_serving()
    {
        var own = OwnFiles.AsOne(Sound("cautions:\n  - { id: look-around, when: drill, text: Mind the dog }\n"));
        var newer = SmallBook.With("drills.yaml", "Look around you", "Look around you twice");

        var read = RulebookReader.Load(newer.With([KeyValuePair.Create(OwnFiles.Kept, own)]));

        Assert.Equal("the shipped caution look-around has changed since you changed it; compare the two", Assert.Single(read.Warnings).Message);
        Assert.True(read.Succeeded);
    }

    [Fact]
    public void Own_changes_written_as_one_file_or_one_for_each_entry_read_the_same()
    {
        var loaded = Sound("name: Our book\ncautions:\n  - { id: mine, when: drill, text: 'Mind: the dog' }\ngoals:\n  - { goal: distance, measures: [club-speed] }\nremoved:\n  - drill: any-three\n");

        var one = RulebookReader.Load(RulebookText.Of(SmallBook.Files).With([KeyValuePair.Create(OwnFiles.Kept, OwnFiles.AsOne(loaded))])).Value;
        var many = RulebookReader.Load(RulebookText.Of(SmallBook.Files).With(OwnFiles.Of(loaded, [], []))).Value;

        Assert.Equal(loaded.Sha256, one.Sha256);
        Assert.Equal(loaded.Sha256, many.Sha256);
        Assert.Equal(OwnFiles.AsOne(loaded), OwnFiles.AsOne(one));
        Assert.Equal(OwnFiles.AsOne(loaded), OwnFiles.AsOne(many));
        Assert.Equal("", OwnFiles.AsOne(Shipped));
    }

    private static LoadedRulebook Sound(string own)
    {
        var read = Read(own);
        Assert.Empty(read.Faults);
        return read.Value;
    }

    private static IReadOnlyList<string> Faults(string own) => [.. Read(own).Faults.Select(f => f.ToString())];

    private static ReadResult<LoadedRulebook> Read(string own) => RulebookReader.Load(RulebookText.Of(SmallBook.Files).With([KeyValuePair.Create("own/changes.yaml", own)]));
}
