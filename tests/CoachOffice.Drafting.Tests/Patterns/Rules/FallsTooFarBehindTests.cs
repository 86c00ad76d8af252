using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The club falls too far behind.</summary>
public sealed class FallsTooFarBehindTests : PatternRuleTests
{
    protected internal override string Pattern => "falls-too-far-behind";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("club-path", 9), Read("shaft-over-plane", -22)];

    protected override Threshold Threshold => new("shaft-over-plane", Short: -12, Beyond: -12.1);
}
