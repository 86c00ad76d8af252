using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Steep, then standing up.</summary>
public sealed class SteepThenStandTests : PatternRuleTests
{
    protected internal override string Pattern => "steep-then-stand";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("pelvis-toward-ball", 7), Read("shaft-over-plane", 14)];

    protected override Threshold Threshold => new("shaft-over-plane", Short: 9, Beyond: 9.1);
}
