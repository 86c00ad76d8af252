using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Stance too wide for the hips.</summary>
public sealed class StanceTooWideTests : PatternRuleTests
{
    protected internal override string Pattern => "stance-too-wide";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("stance-width", 1.35), Read("top-pelvis-turn", 18)];

    protected override Threshold Threshold => new("stance-width", Short: 1.194, Beyond: 1.195);
}
