using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The path follows the aim.</summary>
public sealed class AimMakesPathTests : PatternRuleTests
{
    protected internal override string Pattern => "aim-makes-path";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("aim-shoulders", -9), Read("club-path", -8)];

    protected override Threshold Threshold => new("aim-shoulders", Short: -6.2, Beyond: -6.3);
}
