using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Down on the peg, high on the face.</summary>
public sealed class DownAndHighTests : PatternRuleTests
{
    protected internal override string Pattern => "down-and-high";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("attack-angle", -7), Read("contact-offset-high", 20, swings: 8)];

    protected override Threshold Threshold => new("attack-angle", Short: -2.8, Beyond: -2.9);
}
