using CoachOffice.Drafting.Checks;

namespace CoachOffice.Drafting.Tests.Checks.Conditions;

public sealed class OppositeDrillsCheckTests
{
    [Fact]
    public void Two_roots_whose_drills_push_each_other_out_are_told()
    {
        var anomaly = Assert.Single(Two.Opposite("early.low", "middle.low").Opposite("middle.low", "early.low").Find(AnomalyKind.Conflict));

        Assert.Equal(AnomalySeverity.Warn, anomaly.Severity);
        Assert.Equal(["early", "middle"], anomaly.Example!.Readings.Select(r => r.Measure.Value).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Drills_that_push_one_way_only_leave_work_to_do() => Assert.Empty(Two.Opposite("early.low", "middle.low").Find(AnomalyKind.Conflict));

    [Fact]
    public void Drills_that_push_the_other_sides_out_are_no_conflict() =>
        Assert.Empty(Two.Opposite("early.low", "middle.high").Opposite("middle.low", "early.high").Find(AnomalyKind.Conflict));

    [Fact]
    public void Patterns_that_forbid_each_other_are_refused() =>
        Assert.Single(new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low", "forbids: [middle.low]")
            .Pattern("two", "20", "when: [middle.low]", "root: middle.low", "forbids: [early.low]").Find(AnomalyKind.Conflict));

    [Fact]
    public void Patterns_that_forbid_each_other_but_never_meet_are_not() =>
        Assert.Empty(new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "unless: [middle.low]", "root: early.low", "forbids: [middle.low]")
            .Pattern("two", "20", "when: [middle.low]", "root: middle.low", "forbids: [early.low]").Find(AnomalyKind.Conflict));

    [Fact]
    public void A_pattern_whose_own_drills_push_what_it_rests_on_is_refused()
    {
        var book = new BookUnderCheck().Pattern("one", "10", "when: [early.low, late.high]", "root: early.low").Opposite("early.low", "late.high");

        Assert.Equal(2, Assert.Single(book.Find(AnomalyKind.Conflict)).Example!.Readings.Count);
    }

    [Fact]
    public void A_pattern_whose_drills_push_what_may_be_out_is_not() =>
        Assert.Empty(new BookUnderCheck().Pattern("one", "10", "when: [early.low, { any: [late.high, strike.low] }]", "root: early.low").Opposite("early.low", "late.high").Find(AnomalyKind.Conflict));

    private static BookUnderCheck Two =>
        new BookUnderCheck().Pattern("one", "10", "when: [early.low]", "root: early.low").Pattern("two", "20", "when: [middle.low]", "root: middle.low");
}
