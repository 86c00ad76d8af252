using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The strike costs ball speed.</summary>
public sealed class StrikeCostsBallSpeedTests : PatternRuleTests
{
    protected internal override string Pattern => "strike-costs-ball-speed";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("contact-offset-toe", 18, swings: 8), Read("smash-factor", 1.18)];

    protected override Threshold Threshold => new("contact-offset-toe", Short: 11.2, Beyond: 11.3);
}
