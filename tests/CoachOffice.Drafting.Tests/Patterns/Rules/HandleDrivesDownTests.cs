using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The handle drives the club down.</summary>
public sealed class HandleDrivesDownTests : PatternRuleTests
{
    protected internal override string Pattern => "handle-drives-down";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("attack-angle", -10), Read("impact-shaft-lean", 24)];

    protected override Threshold Threshold => new("impact-shaft-lean", Short: 14.3, Beyond: 14.4);
}
