using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The chest waits too long.</summary>
public sealed class ChestWaitsTooLongTests : PatternRuleTests
{
    protected internal override string Pattern => "chest-waits-too-long";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("club-path", 9), Read("shoulders-open-down", -55)];

    protected override Threshold Threshold => new("shoulders-open-down", Short: -40.8, Beyond: -40.9);
}
