using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The trail side does not bend.</summary>
public sealed class LostSideBendTests : PatternRuleTests
{
    protected internal override string Pattern => "lost-side-bend";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("impact-spine-tilt", 14), Read("address-spine-tilt", 8), Read("downswing-head-shift", 2), Read("downswing-pelvis-shift", 10)];

    protected override Threshold Threshold => new("impact-spine-tilt", Short: 16, Beyond: 15.9);
}
