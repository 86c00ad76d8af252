using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The hips come in, the chest comes up.</summary>
public sealed class StandUpTests : PatternRuleTests
{
    protected internal override string Pattern => "stand-up";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("forward-bend-change", -15), Read("pelvis-toward-ball", 7)];

    protected override Threshold Threshold => new("pelvis-toward-ball", Short: 4.4, Beyond: 4.5);
}
