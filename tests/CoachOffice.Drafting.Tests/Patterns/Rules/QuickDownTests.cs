using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>A hurried start down.</summary>
public sealed class QuickDownTests : PatternRuleTests
{
    protected internal override string Pattern => "quick-down";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("downswing-head-shift", 9), Read("tempo-ratio", 4.6)];

    protected override Threshold Threshold => new("tempo-ratio", Short: 4, Beyond: 4.01);
}
