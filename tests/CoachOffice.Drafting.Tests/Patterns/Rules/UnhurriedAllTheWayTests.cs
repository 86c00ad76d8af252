using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Slow all the way down.</summary>
public sealed class UnhurriedAllTheWayTests : PatternRuleTests
{
    protected internal override string Pattern => "unhurried-all-the-way";

    protected override Club Club => Club.Driver;

    protected override int? SpeedGoal => 47;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("club-speed", 40), Read("downswing-time", 0.46)];

    protected override Threshold Threshold => new("downswing-time", Short: 0.352, Beyond: 0.353);
}
