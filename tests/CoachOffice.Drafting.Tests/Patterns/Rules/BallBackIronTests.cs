using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Ball too far back off the turf.</summary>
public sealed class BallBackIronTests : PatternRuleTests
{
    protected internal override string Pattern => "ball-back-iron";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("attack-angle", -10), Read("ball-forward-of-centre", -6)];

    protected override Threshold Threshold => new("ball-forward-of-centre", Short: -1.1, Beyond: -1.2);
}
