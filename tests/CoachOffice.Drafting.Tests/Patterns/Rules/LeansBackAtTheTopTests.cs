using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Leaning back at the top.</summary>
public sealed class LeansBackAtTheTopTests : PatternRuleTests
{
    protected internal override string Pattern => "leans-back-at-the-top";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("impact-spine-tilt", 30), Read("top-spine-tilt", 25)];

    protected override Threshold Threshold => new("top-spine-tilt", Short: 16.3, Beyond: 16.4);
}
