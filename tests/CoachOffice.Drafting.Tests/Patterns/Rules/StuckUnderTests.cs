using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The club too far behind.</summary>
public sealed class StuckUnderTests : PatternRuleTests
{
    protected internal override string Pattern => "stuck-under";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("club-path", 9), Read("impact-pelvis-open", 8), Read("shaft-over-plane", -18)];

    protected override Threshold Threshold => new("shaft-over-plane", Short: -13, Beyond: -13.1);
}
