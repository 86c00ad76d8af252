using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The head drifts toward the target going back.</summary>
public sealed class EarlyLeadLeanTests : PatternRuleTests
{
    protected internal override string Pattern => "early-lead-lean";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("attack-angle", -10), Read("backswing-head-shift", 7)];

    protected override Threshold Threshold => new("backswing-head-shift", Short: 3.4, Beyond: 3.5);
}
