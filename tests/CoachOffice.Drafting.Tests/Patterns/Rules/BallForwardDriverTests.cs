using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Ball too far forward with the driver.</summary>
public sealed class BallForwardDriverTests : PatternRuleTests
{
    protected internal override string Pattern => "ball-forward-driver";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("ball-forward-of-centre", 31), Read("club-path", -8)];

    protected override Threshold Threshold => new("ball-forward-of-centre", Short: 24.1, Beyond: 24.2);
}
