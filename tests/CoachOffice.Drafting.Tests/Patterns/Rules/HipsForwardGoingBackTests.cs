using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The hips go forward while the club goes back.</summary>
public sealed class HipsForwardGoingBackTests : PatternRuleTests
{
    protected internal override string Pattern => "hips-forward-going-back";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("backswing-pelvis-shift", 10), Read("weight-forward-impact", 48)];

    protected override Threshold Threshold => new("backswing-pelvis-shift", Short: 4.4, Beyond: 4.5);
}
