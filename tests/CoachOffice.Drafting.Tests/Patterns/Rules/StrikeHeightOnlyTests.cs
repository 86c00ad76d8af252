using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Sound swing, strike high or low.</summary>
public sealed class StrikeHeightOnlyTests : PatternRuleTests
{
    protected internal override string Pattern => "strike-height-only";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("contact-offset-high", 18, swings: 10), Read("attack-angle", 2), Read("club-path", 1), Read("pelvis-toward-ball", 1), Read("shaft-over-plane", 2)];

    protected override Threshold Threshold => new("contact-offset-high", Short: 13, Beyond: 13.1);
}
