using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Generated;

public sealed class MaskedCheckTests
{
    [Fact]
    public void A_pattern_always_explained_away_by_another_is_masked()
    {
        // "late" fires only beside "early", which claims its root; what it would explain is back in time.
        var anomalies = Book("when: [early.low at least moderate, late.low]").Find(AnomalyKind.Masked);

        var anomaly = Assert.Single(anomalies);
        Assert.Equal("two", anomaly.Entries[0].Id);
        Assert.Equal(["early", "late"], anomaly.Example!.Readings.Select(r => r.Measure.Value).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_pattern_that_also_fires_alone_is_heard() => Assert.Empty(Book("when: [late.low]").Find(AnomalyKind.Masked));

    [Fact]
    public void A_pattern_whose_condition_only_a_derived_measure_contradicts_is_found_to_fire_never()
    {
        var book = new BookUnderCheck().Measure("strike", ", derived: { sum: [early, middle] }").Range("early", "iron: [-1, 1]").Range("middle", "iron: [-1, 1]").Range("strike", "iron: [-50, 50]")
            .Pattern("one", "10", "when: [early.low, middle measured]", "unless: [strike measured]", "root: early.low");

        Assert.Contains(book.Find(AnomalyKind.NeverTrue), a => a.Sentence.StartsWith("fired in none of", StringComparison.Ordinal));
    }

    private static BookUnderCheck Book(string when) =>
        new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low", "explains-if-present: [late.low]")
            .Pattern("two", "20", when, "root: late.low", "explains: [early.high]");
}
