using CoachOffice.Domain.Measuring;

namespace CoachOffice.Drafting.Tests.Patterns.Rules;

/// <summary>Open at the top, open at the ball.</summary>
public sealed class OpenTopOpenBallTests : PatternRuleTests
{
    protected internal override string Pattern => "open-top-open-ball";

    protected override Club Club => Club.Iron;

    protected override IReadOnlyList<MeasuredValue> Readings => [Read("face-to-path", 8, swings: 8), Read("top-face", -40)];

    protected override Threshold Threshold => new("top-face", Short: -20.8, Beyond: -20.9);
}
