using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Too close to the ball.</summary>
public sealed class CrowdedBallTests : PatternRuleTests
{
    protected internal override string Pattern => "crowded-ball";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("ball-distance", 2), Read("pelvis-toward-ball", 7)];

    protected override Threshold Threshold => new("ball-distance", Short: 7.6, Beyond: 7.5);
}
