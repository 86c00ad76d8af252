using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Reach;

public sealed class CautionReachCheckTests
{
    [Theory]
    [InlineData("drill", true)]
    [InlineData("swinging-club", true)]
    [InlineData("device-doubtful", true)]
    [InlineData("height-needed", true)]
    [InlineData("slow-video", true)]
    [InlineData("readings-disagree", true)]
    [InlineData("always", false)]
    [InlineData("full-speed", false)]
    [InlineData("limit-current", false)]
    public void A_caution_whose_occasion_cannot_come_is_named(string occasion, bool found)
    {
        var anomalies = Book.With($"cautions:\n  - {{ id: mind, when: {occasion}, text: Mind }}").Find(AnomalyKind.Unreachable);

        Assert.Equal(found ? 1 : 0, anomalies.Count);
        if (found) Assert.Equal("mind (extra.yaml:3)", anomalies[0].Entries[0].ToString());
    }

    [Theory]
    [InlineData("slow-video", ", needs-fast-video: true")]
    [InlineData("device-doubtful", ", doubtful: [null, 50]")]
    public void It_can_come_once_a_measure_asks_for_it(string occasion, string key) =>
        Assert.Empty(Book.Measure("late", key).With($"cautions:\n  - {{ id: mind, when: {occasion}, text: Mind }}").Find(AnomalyKind.Unreachable));

    private static BookUnderCheck Book => new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low");
}
