using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Reach;

public sealed class CaseCheckTests
{
    private const string Fires = "  - { pattern: one, name: fires, club: iron, readings: { early: -8, middle: -8 }, fires: true, why: both are out }\n";

    [Fact]
    public void A_pattern_without_cases_lacks_both_and_is_shown_what_they_could_be()
    {
        var anomalies = Book.Find(AnomalyKind.NoCase);

        Assert.Equal(2, anomalies.Count);
        Assert.Equal(["early", "middle"], anomalies[0].Example!.Readings.Select(r => r.Measure.Value).Order(StringComparer.Ordinal));
        Assert.Single(anomalies[1].Example!.Readings);
    }

    [Theory]
    [InlineData("early: 0, middle: -8", 0)]
    [InlineData("early: 3.9, middle: -8", 0)]
    [InlineData("early: 9, middle: -8", 1)]
    [InlineData("early: -8", 0)]
    [InlineData("late: -8", 1)]
    [InlineData("early: -3, middle: -3", 0)]
    [InlineData("early: 5, middle: 5", 1)]
    public void A_near_miss_is_one_reading_and_one_step_away(string readings, int missing)
    {
        var book = Book.With($"cases:\n{Fires}  - {{ pattern: one, name: not, club: iron, readings: {{ {readings} }}, fires: false, why: it is not }}");

        Assert.Equal(missing, book.Find(AnomalyKind.NoCase).Count);
    }

    private static BookUnderCheck Book => new BookUnderCheck().Pattern("one", "10", "when: [early.low, middle.low]", "root: early.low");
}
