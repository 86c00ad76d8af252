using CoachOffice.Drafting.Checks;
using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Checks;

public sealed class ShippedBookTests
{
    /// <summary>Two are meant. Hips and head that each go their way going back weigh the same, and either may be named the cause of the steep blow.
    /// A student who leans away too much and yet lunges is to find out which comes first before drilling either, so a draft withholds both sets.</summary>
    [Fact]
    public void The_shipped_rules_as_a_whole_have_no_anomaly_but_two_that_are_meant() =>
        Assert.Equal(
            [(AnomalySeverity.Warn, "body-outruns, setup-tilt-too-much"), (AnomalySeverity.Warn, "early-lead-lean, sway")],
            RuleBaseCheck.Of(HouseBook.Compiled.Loaded).Select(a => (a.Severity, string.Join(", ", a.Entries.Select(e => e.Id)))).OrderBy(a => a.Item2, StringComparer.Ordinal));

    [Fact]
    public void The_same_book_is_told_the_same_twice()
    {
        var book = new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low").Drill("  - { id: lost, name: L, trains: [], stages: [play], rooms: [range], club: full, steps: [S], cue: c, done-when: { hits: 1, of: 2, what: w } }").Load();

        Assert.Equal(RuleBaseCheck.Of(book).Select(a => a.ToString()), RuleBaseCheck.Of(book).Select(a => a.ToString()));
        Assert.Equal(3, RuleBaseCheck.Of(book).Count);
    }

    [Fact]
    public void A_book_whose_files_are_not_kept_is_checked_without_places()
    {
        var read = new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low").Load();
        var bare = read with { Text = RulebookText.Of([]) };

        Assert.All(RuleBaseCheck.Of(bare).SelectMany(a => a.Entries), e => Assert.Null(e.File));
        Assert.Equal("one (patterns.yaml:2)", RuleBaseCheck.Of(read)[0].Entries[0].ToString());
    }
}
