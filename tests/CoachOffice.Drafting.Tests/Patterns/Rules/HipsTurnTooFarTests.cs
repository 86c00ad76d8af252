using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Hips turned too far to be back in time.</summary>
public sealed class HipsTurnTooFarTests : PatternRuleTests
{
    protected internal override string Pattern => "hips-turn-too-far";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("impact-pelvis-open", 5), Read("top-pelvis-turn", 78)];

    protected override Threshold Threshold => new("top-pelvis-turn", Short: 63.8, Beyond: 63.9);
}
