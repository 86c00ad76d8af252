using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Lowest before the ball.</summary>
public sealed class BottomTooEarlyTests : PatternRuleTests
{
    protected internal override string Pattern => "bottom-too-early";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("attack-angle", 2), Read("low-point", -3)];

    protected override Threshold Threshold => new("low-point", Short: 0.9, Beyond: 0.8);
}
