using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The hips run on.</summary>
public sealed class SlideTests : PatternRuleTests
{
    protected internal override string Pattern => "slide";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("downswing-pelvis-shift", 22), Read("impact-spine-tilt", 36)];

    protected override Threshold Threshold => new("downswing-pelvis-shift", Short: 17.4, Beyond: 17.5);
}
