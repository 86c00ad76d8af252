using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Sound swing, strike toward heel or toe.</summary>
public sealed class StrikeOnlyTests : PatternRuleTests
{
    protected internal override string Pattern => "strike-only";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("contact-offset-toe", 16, swings: 10), Read("attack-angle", -4), Read("club-path", 1), Read("pelvis-toward-ball", 1), Read("shaft-over-plane", 2)];

    protected override Threshold Threshold => new("contact-offset-toe", Short: 11, Beyond: 11.1);
}
