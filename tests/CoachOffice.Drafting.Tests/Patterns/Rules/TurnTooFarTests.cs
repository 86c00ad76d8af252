using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The turn goes too far.</summary>
public sealed class TurnTooFarTests : PatternRuleTests
{
    protected internal override string Pattern => "turn-too-far";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("lag-angle", 124), Read("top-shoulder-turn", 122)];

    protected override Threshold Threshold => new("top-shoulder-turn", Short: 108.8, Beyond: 108.9);
}
