using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Hurried on the way down.</summary>
public sealed class HurriedStartDownTests : PatternRuleTests
{
    protected internal override string Pattern => "hurried-start-down";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("downswing-head-shift", 11), Read("downswing-time", 0.12)];

    protected override Threshold Threshold => new("downswing-time", Short: 0.188, Beyond: 0.187);
}
