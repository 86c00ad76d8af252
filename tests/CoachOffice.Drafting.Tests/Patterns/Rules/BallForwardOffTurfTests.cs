using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Ball too far forward off the turf.</summary>
public sealed class BallForwardOffTurfTests : PatternRuleTests
{
    protected internal override string Pattern => "ball-forward-off-turf";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("ball-forward-of-centre", 14), Read("low-point", -4)];

    protected override Threshold Threshold => new("ball-forward-of-centre", Short: 9.1, Beyond: 9.2);
}
