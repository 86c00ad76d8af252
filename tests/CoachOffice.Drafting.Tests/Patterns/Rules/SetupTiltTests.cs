using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Too little tilt from the start.</summary>
public sealed class SetupTiltTests : PatternRuleTests
{
    protected internal override string Pattern => "setup-tilt";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("address-spine-tilt", -2), Read("impact-spine-tilt", 14)];

    protected override Threshold Threshold => new("address-spine-tilt", Short: 1.7, Beyond: 1.6);
}
