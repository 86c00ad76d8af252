using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Ranges;

public sealed class RangeGapCheckTests
{
    private static BookUnderCheck Book => new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low");

    [Fact]
    public void A_club_without_a_range_between_two_that_have_one_is_a_gap()
    {
        var gap = Assert.Single(Book.Range("early", "driver: [0, 10], hybrid: [0, 10], iron: [0, 10], wedge: [0, 10]").Find(AnomalyKind.Gap));

        Assert.Equal(AnomalySeverity.Warn, gap.Severity);
        Assert.Equal("ranges.yaml:2", $"{gap.Entries[0].File}:{gap.Entries[0].Line}");
        Assert.Contains("with the fairway", gap.Sentence, StringComparison.Ordinal);
        Assert.Equal("early", Assert.Single(gap.Example!.Readings).Measure.Value);
    }

    [Fact]
    public void A_club_left_out_at_the_end_is_meant() =>
        Assert.Empty(Book.Range("early", "fairway: [0, 10], hybrid: [0, 10], iron: [0, 10]").Find(AnomalyKind.Gap));

    // The step is 4 and the chance of lying outside must reach 0.90, which takes 1.2816 errors.
    [Theory]
    [InlineData(3.2, 1)]
    [InlineData(3.0, 0)]
    public void A_step_within_the_reading_error_leaves_no_mild(double setup, int found) =>
        Assert.Equal(found, Book.WithError("early", setup).Find(AnomalyKind.Gap).Count);
}
