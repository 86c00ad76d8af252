using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>A short turn costs speed.</summary>
public sealed class ShortTurnTests : PatternRuleTests
{
    protected internal override string Pattern => "short-turn";

    protected override Club Club => Club.Driver;

    protected override int? SpeedGoal => 47;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("club-speed", 40), Read("top-shoulder-turn", 60)];

    protected override Threshold Threshold => new("top-shoulder-turn", Short: 72.2, Beyond: 72.1);
}
