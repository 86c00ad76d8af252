using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Rushed away from the ball.</summary>
public sealed class RushedTakeawayTests : PatternRuleTests
{
    protected internal override string Pattern => "rushed-takeaway";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("backswing-time", 0.45), Read("top-shoulder-turn", 50)];

    protected override Threshold Threshold => new("backswing-time", Short: 0.626, Beyond: 0.625);
}
