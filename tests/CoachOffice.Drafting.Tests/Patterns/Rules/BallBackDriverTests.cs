using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Ball too far back with the driver.</summary>
public sealed class BallBackDriverTests : PatternRuleTests
{
    protected internal override string Pattern => "ball-back-driver";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("attack-angle", -5), Read("ball-forward-of-centre", 6)];

    protected override Threshold Threshold => new("ball-forward-of-centre", Short: 9.9, Beyond: 9.8);
}
