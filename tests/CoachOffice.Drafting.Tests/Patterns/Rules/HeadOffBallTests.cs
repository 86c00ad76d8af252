using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The head leaves the ball.</summary>
public sealed class HeadOffBallTests : PatternRuleTests
{
    protected internal override string Pattern => "head-off-ball";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("backswing-head-shift", -12), Read("low-point", -3)];

    protected override Threshold Threshold => new("backswing-head-shift", Short: -7.4, Beyond: -7.5);
}
