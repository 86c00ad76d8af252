using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Steep and digging.</summary>
public sealed class SteepDigsTests : PatternRuleTests
{
    protected internal override string Pattern => "steep-digs";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("attack-angle", -10), Read("shaft-over-plane", 18)];

    protected override Threshold Threshold => new("shaft-over-plane", Short: 9, Beyond: 9.1);
}
