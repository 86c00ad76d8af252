using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Down on a teed ball.</summary>
public sealed class ChoppedDriverTests : PatternRuleTests
{
    protected internal override string Pattern => "chopped-driver";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("attack-angle", -5), Read("ball-forward-of-centre", 15)];

    protected override Threshold Threshold => new("attack-angle", Short: -3.2, Beyond: -3.3);
}
