using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The hips stay back.</summary>
public sealed class HangingPelvisTests : PatternRuleTests
{
    protected internal override string Pattern => "hanging-pelvis";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("downswing-pelvis-shift", -1), Read("impact-spine-tilt", 14), Read("downswing-head-shift", 2)];

    protected override Threshold Threshold => new("downswing-pelvis-shift", Short: 2.6, Beyond: 2.5);
}
