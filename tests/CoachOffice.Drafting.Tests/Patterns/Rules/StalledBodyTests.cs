using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The body stops at the ball.</summary>
public sealed class StalledBodyTests : PatternRuleTests
{
    protected internal override string Pattern => "stalled-body";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("club-path", 9), Read("impact-pelvis-open", 8), Read("impact-shaft-lean", -3)];

    protected override Threshold Threshold => new("impact-pelvis-open", Short: 19.2, Beyond: 19.1);
}
