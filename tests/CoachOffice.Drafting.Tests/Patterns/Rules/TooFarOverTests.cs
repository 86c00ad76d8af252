using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Too far onto the lead foot.</summary>
public sealed class TooFarOverTests : PatternRuleTests
{
    protected internal override string Pattern => "too-far-over";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("low-point", 18), Read("weight-forward-impact", 100)];

    protected override Threshold Threshold => new("weight-forward-impact", Short: 96.4, Beyond: 96.5);
}
