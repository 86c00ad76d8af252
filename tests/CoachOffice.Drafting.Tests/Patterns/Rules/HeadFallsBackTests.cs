using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The head falls back on the way down.</summary>
public sealed class HeadFallsBackTests : PatternRuleTests
{
    protected internal override string Pattern => "head-falls-back";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("downswing-head-shift", -12), Read("impact-spine-tilt", 30)];

    protected override Threshold Threshold => new("downswing-head-shift", Short: -5.4, Beyond: -5.5);
}
