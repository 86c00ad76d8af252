using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>The body outruns the club.</summary>
public sealed class BodyOutrunsTests : PatternRuleTests
{
    protected internal override string Pattern => "body-outruns";

    protected override Club Club => Club.Driver;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("downswing-head-shift", 9), Read("impact-spine-tilt", 14)];

    protected override Threshold Threshold => new("downswing-head-shift", Short: 6.4, Beyond: 6.5);
}
