using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Stance too narrow for the head.</summary>
public sealed class StanceTooNarrowTests : PatternRuleTests
{
    protected internal override string Pattern => "stance-too-narrow";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("backswing-head-shift", -12), Read("stance-width", 0.6)];

    protected override Threshold Threshold => new("stance-width", Short: 0.756, Beyond: 0.755);
}
