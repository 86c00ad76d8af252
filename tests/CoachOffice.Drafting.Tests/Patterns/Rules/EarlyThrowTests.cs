using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The wrist angle spent early.</summary>
public sealed class EarlyThrowTests : PatternRuleTests
{
    protected internal override string Pattern => "early-throw";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("impact-shaft-lean", -3), Read("lag-angle", 120), Read("shaft-over-plane", 2)];

    protected override Threshold Threshold => new("lag-angle", Short: 110.6, Beyond: 110.7);
}
