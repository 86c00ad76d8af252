using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Upright start, flat club.</summary>
public sealed class UprightAndAroundTests : PatternRuleTests
{
    protected internal override string Pattern => "upright-and-around";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("address-forward-bend", 22), Read("shaft-over-plane", -20)];

    protected override Threshold Threshold => new("address-forward-bend", Short: 28.7, Beyond: 28.6);
}
