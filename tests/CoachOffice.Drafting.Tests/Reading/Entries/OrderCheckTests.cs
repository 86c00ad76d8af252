using CoachOffice.Drafting.Reading;

namespace CoachOffice.Drafting.Tests.Reading.Entries;

/// <summary>Work and causes that would go round in a circle are refused when the rulebook is read, and the circle is printed.</summary>
public sealed class OrderCheckTests
{
    private const string BothWays = """
        patterns:
          - { id: a, name: A, precedence: 80, when: [impact-spine-tilt.low], root: impact-spine-tilt.low, explains: [impact-spine-tilt.high], because: a, rationale: a }
          - { id: b, name: B, precedence: 81, when: [impact-spine-tilt.high], root: impact-spine-tilt.high, explains: [impact-spine-tilt.low], because: b, rationale: b }
        """;

    [Fact]
    public void Causes_in_a_circle() =>
        Refused(SmallBook.WithFile("more.yaml", BothWays), "causes run in a circle: impact-spine-tilt.low -> impact-spine-tilt.high -> impact-spine-tilt.low");

    [Fact]
    public void Patterns_that_come_before_each_other() =>
        Refused(Patterns(("over: [head-dives]", "before: [head-dives]"), ("explains: []", "explains: []\n    before: [setup-tilt]")), "the patterns wait for each other in a circle: head-dives -> setup-tilt -> head-dives");

    [Fact]
    public void A_pattern_put_first_whose_measure_a_law_lets_wait()
    {
        var files = Patterns(("over: [head-dives]", "before: [head-dives]")).Files;
        var order = files["order.yaml"].Replace("work: impact-spine-tilt, after: [address-spine-tilt, head-shift]", "work: address-spine-tilt, after: [head-shift]", StringComparison.Ordinal);
        Refused(
            RulebookText.Of(files.Where(f => f.Key != "order.yaml").Append(KeyValuePair.Create("order.yaml", order))),
            "setup-tilt is worked on before head-dives, but a law of order lets address-spine-tilt wait for head-shift");
    }

    private static RulebookText Patterns(params (string Old, string New)[] changes) =>
        SmallBook.WithFile("patterns.yaml", changes.Aggregate(SmallBook.Files["patterns.yaml"], (text, change) => text.Replace(change.Old, change.New, StringComparison.Ordinal)));

    private static void Refused(RulebookText text, string because) =>
        Assert.Contains(RulebookReader.Load(text).Faults, fault => fault.Message.Contains(because, StringComparison.Ordinal));
}
