using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The shoulders open first.</summary>
public sealed class ShouldersOpenEarlyTests : PatternRuleTests
{
    protected internal override string Pattern => "shoulders-open-early";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("club-path", -8), Read("shaft-over-plane", 14), Read("shoulders-open-down", 14)];

    protected override Threshold Threshold => new("shoulders-open-down", Short: 5.8, Beyond: 5.9);
}
