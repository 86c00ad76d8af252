using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The pressure stays back.</summary>
public sealed class PressureStaysBackTests : PatternRuleTests
{
    protected internal override string Pattern => "pressure-stays-back";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("downswing-pelvis-shift", -2), Read("weight-forward-impact", 52)];

    protected override Threshold Threshold => new("downswing-pelvis-shift", Short: 1.6, Beyond: 1.5);
}
