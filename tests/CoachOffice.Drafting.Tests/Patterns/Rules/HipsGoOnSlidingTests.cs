using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The hips slide further than the top shows.</summary>
public sealed class HipsGoOnSlidingTests : PatternRuleTests
{
    protected internal override string Pattern => "hips-go-on-sliding";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("max-pelvis-away", -13), Read("weight-forward-impact", 48)];

    protected override Threshold Threshold => new("max-pelvis-away", Short: -7.4, Beyond: -7.5);
}
