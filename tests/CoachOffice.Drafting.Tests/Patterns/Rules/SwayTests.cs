using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The hips slide away going back.</summary>
public sealed class SwayTests : PatternRuleTests
{
    protected internal override string Pattern => "sway";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("backswing-pelvis-shift", -10), Read("low-point", -3)];

    protected override Threshold Threshold => new("backswing-pelvis-shift", Short: -6.4, Beyond: -6.5);
}
