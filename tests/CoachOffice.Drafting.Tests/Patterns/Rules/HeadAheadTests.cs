using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The head gets there first.</summary>
public sealed class HeadAheadTests : PatternRuleTests
{
    protected internal override string Pattern => "head-ahead";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("downswing-head-shift", 9), Read("impact-head-behind-ball", 6)];

    protected override Threshold Threshold => new("downswing-head-shift", Short: 6.4, Beyond: 6.5);
}
