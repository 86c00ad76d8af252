using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The arms send the club out.</summary>
public sealed class OutToInArmsTests : PatternRuleTests
{
    protected internal override string Pattern => "out-to-in-arms";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("club-path", -8), Read("shaft-over-plane", 14), Read("impact-shoulders-open", 20)];

    protected override Threshold Threshold => new("shaft-over-plane", Short: 9, Beyond: 9.1);
}
