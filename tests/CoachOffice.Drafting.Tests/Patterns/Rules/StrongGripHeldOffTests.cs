using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The strong hand drags the handle.</summary>
public sealed class StrongGripHeldOffTests : PatternRuleTests
{
    protected internal override string Pattern => "strong-grip-held-off";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("impact-shaft-lean", 22), Read("lead-hand-grip", 80)];

    protected override Threshold Threshold => new("lead-hand-grip", Short: 60.8, Beyond: 60.9);
}
