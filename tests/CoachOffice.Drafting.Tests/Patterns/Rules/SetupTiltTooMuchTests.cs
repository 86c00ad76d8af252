using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Too much tilt from the start.</summary>
public sealed class SetupTiltTooMuchTests : PatternRuleTests
{
    protected internal override string Pattern => "setup-tilt-too-much";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("address-spine-tilt", 14), Read("impact-spine-tilt", 26)];

    protected override Threshold Threshold => new("address-spine-tilt", Short: 10.3, Beyond: 10.4);
}
