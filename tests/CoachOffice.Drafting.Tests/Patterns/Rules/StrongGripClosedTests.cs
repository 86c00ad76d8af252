using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The lead hand shuts the face.</summary>
public sealed class StrongGripClosedTests : PatternRuleTests
{
    protected internal override string Pattern => "strong-grip-closed";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("face-to-path", -8), Read("lead-hand-grip", 75)];

    protected override Threshold Threshold => new("lead-hand-grip", Short: 60.8, Beyond: 60.9);
}
