using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Good path, face elsewhere.</summary>
public sealed class PathGoodFaceOffTests : PatternRuleTests
{
    protected internal override string Pattern => "path-good-face-off";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("face-to-path", 9), Read("club-path", 1)];

    protected override Threshold Threshold => new("face-to-path", Short: 4.6, Beyond: 4.7);
}
