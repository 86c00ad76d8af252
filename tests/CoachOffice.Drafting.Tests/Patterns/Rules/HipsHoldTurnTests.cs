using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The hips hold the turn.</summary>
public sealed class HipsHoldTurnTests : PatternRuleTests
{
    protected internal override string Pattern => "hips-hold-turn";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("top-pelvis-turn", 18), Read("top-shoulder-turn", 60)];

    protected override Threshold Threshold => new("top-pelvis-turn", Short: 26.2, Beyond: 26.1);
}
