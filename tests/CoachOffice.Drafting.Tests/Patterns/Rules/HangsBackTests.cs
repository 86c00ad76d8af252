using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Hanging back at the ball.</summary>
public sealed class HangsBackTests : PatternRuleTests
{
    protected internal override string Pattern => "hangs-back";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("impact-spine-tilt", 30), Read("low-point", -3)];

    protected override Threshold Threshold => new("impact-spine-tilt", Short: 21.3, Beyond: 21.4);
}
