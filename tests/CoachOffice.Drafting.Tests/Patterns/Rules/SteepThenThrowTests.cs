using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Steep, then thrown.</summary>
public sealed class SteepThenThrowTests : PatternRuleTests
{
    protected internal override string Pattern => "steep-then-throw";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("impact-shaft-lean", -3), Read("lag-angle", 120), Read("shaft-over-plane", 14)];

    protected override Threshold Threshold => new("shaft-over-plane", Short: 9, Beyond: 9.1);
}
