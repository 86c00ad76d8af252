using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Bent so far over that it cannot last.</summary>
public sealed class BentLowComesUpTests : PatternRuleTests
{
    protected internal override string Pattern => "bent-low-comes-up";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("address-forward-bend", 54), Read("forward-bend-change", -18)];

    protected override Threshold Threshold => new("address-forward-bend", Short: 47.3, Beyond: 47.4);
}
