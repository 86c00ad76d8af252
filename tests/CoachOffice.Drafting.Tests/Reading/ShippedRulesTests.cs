using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Reading;

/// <summary>The rulebook that ships with the program, as copied beside the executable.</summary>
public sealed class ShippedRulesTests
{
    private static readonly RulebookText Text = RulebookText.FromDirectory(Path.Combine(AppContext.BaseDirectory, "rules")).Value;

    [Fact]
    public void It_reads_without_a_fault() => Assert.Equal([], RulebookReader.Load(Text).Faults);

    [Fact]
    public void Every_pattern_has_a_case_in_which_it_fires_and_one_in_which_it_does_not()
    {
        var loaded = RulebookReader.Load(Text).Value;

        var cases = loaded.Cases.ToLookup(c => (c.Pattern, c.Fires));
        Assert.Equal([], loaded.Book.Patterns.Where(p => !cases.Contains((p.Id, true)) || !cases.Contains((p.Id, false))).Select(p => p.Id.Value));
    }

    [Fact]
    public void A_bundle_reads_to_the_same_hash() =>
        Assert.Equal(RulebookReader.Load(Text).Value.Sha256, RulebookReader.Load(RulebookText.Unbundle(Text.Bundle())).Value.Sha256);
}
