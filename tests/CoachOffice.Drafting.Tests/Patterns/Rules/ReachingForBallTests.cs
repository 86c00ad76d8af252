using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Too far from the ball.</summary>
public sealed class ReachingForBallTests : PatternRuleTests
{
    protected internal override string Pattern => "reaching-for-ball";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("ball-distance", 25), Read("contact-offset-toe", 16, swings: 10)];

    protected override Threshold Threshold => new("ball-distance", Short: 19.4, Beyond: 19.5);
}
