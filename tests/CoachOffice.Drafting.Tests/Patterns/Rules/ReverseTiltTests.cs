using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Leaning toward the target at the top.</summary>
public sealed class ReverseTiltTests : PatternRuleTests
{
    protected internal override string Pattern => "reverse-tilt";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("top-spine-tilt", -6)];

    protected override Threshold Threshold => new("top-spine-tilt", Short: -3, Beyond: -3.1);
}
